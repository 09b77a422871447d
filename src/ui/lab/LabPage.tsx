import { createComputed, createMemo, createResource, createSignal, on, Show } from 'solid-js'
import { knownQuantities } from '../../intake/known'
import type { Answers, ColumnAnswer } from '../../intake/understanding'
import type { Problem } from '../../words/problem'
import { say } from '../../words/say'
import { FileButton } from '../notebooks/FileButton'
import { Problems } from '../notebooks/Problems'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { goTo } from '../shell/place'
import { Columns } from './Columns'
import { labFile, setLabFile } from './labFile'
import { Questions } from './Questions'
import { Refused } from './Refused'
import { readLab } from './readLab'
import { Samples } from './Samples'
import { type Censored, type Chosen, scenariosFrom } from './scenariosFrom'

/** A lab file: how it was understood, what it leaves open, its samples; the chosen ones become scenarios. */
export function LabPage() {
  const book = useBook()
  const [answers, setAnswers] = createSignal<Answers>({})
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  // Only what is entered: a worked-out quantity in a file stays a note.
  const known = createMemo(() =>
    knownQuantities(book.catalog().worksheets).filter(
      ({ accept, choices }) => accept !== undefined || choices !== undefined,
    ),
  )
  const asked = () => {
    const file = labFile()
    return file && { file, answers: answers(), known: known() }
  }
  const [read] = createResource(asked, (now) => readLab(now.file, now.known, now.answers))
  const understanding = () => read.latest?.understanding
  const account = () => read.latest?.account
  const samples = createMemo<readonly Chosen[]>(() =>
    (read.latest?.outcomes ?? []).flatMap((outcome) =>
      outcome.kind === 'sample' ? [{ row: outcome.row, sample: outcome.sample }] : [],
    ),
  )
  const refused = createMemo(() => (read.latest?.outcomes ?? []).filter((outcome) => outcome.kind === 'refused'))

  // What was answered about one file says nothing of the next.
  createComputed(
    on(labFile, () => {
      setAnswers({})
      setProblems([])
    }),
  )

  function answerColumn(heading: string, answer: ColumnAnswer): void {
    const before = answers().columns ?? {}
    setAnswers({ ...answers(), columns: { ...before, [heading]: { ...before[heading], ...answer } } })
  }

  function take(chosen: readonly Chosen[], options: { elsewhere: boolean; censored: Censored }): void {
    const edit = scenariosFrom(book.notebook(), chosen, labFile()?.name ?? '', { ...options, catalog: book.catalog() })
    const trouble = book.dispatch(edit)
    setProblems(trouble ? [trouble] : [])
    if (trouble) return
    announce(say('page.lab.taken', { count: chosen.length }))
    setLabFile(null)
    goTo({ page: 'worksheets', part: 'sample' })
  }

  return (
    <article class="text-page lab">
      <h1>{say('page.title.lab')}</h1>
      <p class="intro">{say('page.lab.intro')}</p>
      <div class="acts">
        <FileButton label={say('page.lab.choose')} accept=".csv,.tsv,.txt,text/csv,text/plain" onFile={setLabFile} />
        <Show when={labFile()}>{(file) => <span class="quiet">{file().name}</span>}</Show>
      </div>
      <Problems problems={problems()} />
      <Show when={understanding()}>
        {(now) => (
          <>
            <Problems problems={now().problems} />
            <Show when={now().problems.length === 0}>
              <Questions
                questions={now().questions}
                onAnswer={(change) => setAnswers({ ...answers(), ...change })}
                onColumn={answerColumn}
              />
              <Columns understanding={now()} known={known()} onAnswer={answerColumn} />
              <Show when={now().doubts.length > 0}>
                <Problems problems={now().doubts} />
              </Show>
            </Show>
          </>
        )}
      </Show>
      <Show when={account()}>
        {(count) => (
          <p class="account" role="status">
            {say('page.lab.account', {
              rows: count().rows,
              samples: count().samples,
              refused: count().refused,
              skipped: count().skipped,
            })}
          </p>
        )}
      </Show>
      <Refused refused={refused()} />
      <Show when={samples().length > 0}>
        <Samples samples={samples()} censored={(account()?.censored ?? 0) > 0} onTake={take} />
      </Show>
    </article>
  )
}
