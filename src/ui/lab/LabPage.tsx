import { createComputed, createMemo, createResource, createSignal, on, onCleanup, Show } from 'solid-js'
import { createIntakeClient, type Progress } from '../../intake/connect'
import { knownQuantities } from '../../intake/known'
import type { Answers, ColumnAnswer } from '../../intake/understanding'
import { problemsIntake } from '../../words/en/problems-intake'
import { isProblem, type Problem } from '../../words/problem'
import { addWords, say } from '../../words/say'
import { FileButton } from '../notebooks/FileButton'
import { Problems } from '../notebooks/Problems'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { goTo } from '../shell/place'
import { AccountLine } from './AccountLine'
import { Columns } from './Columns'
import { labFile, setLabFile } from './labFile'
import { Questions } from './Questions'
import { Refused } from './Refused'
import { readLab } from './readLab'
import { Samples } from './Samples'
import { type Censored, type Chosen, scenariosFrom } from './scenariosFrom'

addWords(problemsIntake)

/** A lab file: how it was understood, what it leaves open, its samples; the chosen ones become scenarios. */
export function LabPage() {
  const book = useBook()
  const client = createIntakeClient()
  const [answers, setAnswers] = createSignal<Answers>({})
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const [progress, setProgress] = createSignal<Progress | null>(null)
  let reading = new AbortController()
  onCleanup(() => client.close())

  // Only what is entered: a worked-out quantity in a file stays a note.
  const known = createMemo(() =>
    knownQuantities(book.catalog().worksheets).filter(
      ({ accept, choices }) => accept !== undefined || choices !== undefined,
    ),
  )
  // What was answered about one file says nothing of the next.
  createComputed(
    on(labFile, () => {
      setAnswers({})
      setProblems([])
    }),
  )
  const asked = () => {
    const file = labFile()
    return file && { file, answers: answers(), known: known() }
  }
  const [read] = createResource(asked, async (now) => {
    reading.abort()
    reading = new AbortController()
    const found = await readLab(client, now.file, now.known, now.answers, setProgress, reading.signal)
    setProgress(null)
    if (isProblem(found)) setProblems([found])
    return isProblem(found) ? null : found
  })
  const found = () => (labFile() ? (read.latest ?? null) : null)

  function answerColumn(heading: string, answer: ColumnAnswer): void {
    const before = answers().columns ?? {}
    setAnswers({ ...answers(), columns: { ...before, [heading]: { ...before[heading], ...answer } } })
  }

  function take(chosen: readonly Chosen[], options: { elsewhere: boolean; censored: Censored }): void {
    const edit = scenariosFrom(book.notebook(), chosen, labFile()?.name ?? '', { ...options, catalog: book.catalog() })
    const before = book.scenarios().length
    const trouble = book.dispatch(edit)
    setProblems(trouble ? [trouble] : [])
    if (trouble) return
    // The first of the new scenarios comes into sight.
    book.selection.selectAt({ row: 0, column: before })
    announce(say('page.lab.taken', { count: chosen.length }))
    setLabFile(null)
    goTo({ page: 'worksheets', part: 'sample' })
  }

  return (
    <article class="text-page lab">
      <h1>{say('page.title.lab')}</h1>
      <p class="intro">{say('page.lab.intro')}</p>
      <div class="acts">
        <FileButton
          label={say('page.lab.choose')}
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          onFile={(file) => setLabFile(file)}
        />
        <Show when={labFile()}>{(file) => <span class="quiet">{file().name}</span>}</Show>
        <Show when={progress()}>
          {(now) => (
            <span class="quiet" role="status">
              {say('page.lab.reading', {
                share: Math.round((100 * now().bytes) / Math.max(now().total, 1)),
                rows: now().rows,
              })}
            </span>
          )}
        </Show>
      </div>
      <Problems problems={problems()} />
      <Show when={found()}>
        {(now) => (
          <>
            <Problems problems={now().understanding.problems} />
            <Show when={now().understanding.problems.length === 0}>
              <Questions
                questions={now().understanding.questions}
                onAnswer={(change) => setAnswers({ ...answers(), ...change })}
                onColumn={answerColumn}
              />
              <Columns understanding={now().understanding} known={known()} onAnswer={answerColumn} />
              <Problems problems={now().understanding.doubts} />
            </Show>
            <Show when={now().imported}>
              {(imported) => (
                <>
                  <AccountLine account={imported().account} />
                  <Refused
                    refused={imported().refused}
                    count={imported().account.refused}
                    csv={imported().refusedCsv}
                    file={labFile()?.name ?? ''}
                  />
                  <Show when={now().samples.length > 0}>
                    <Samples
                      samples={now().samples}
                      count={imported().account.samples}
                      censored={imported().account.censored > 0}
                      onTake={take}
                    />
                  </Show>
                </>
              )}
            </Show>
          </>
        )}
      </Show>
    </article>
  )
}
