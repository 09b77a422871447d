import { createEffect, createMemo, createSignal, onCleanup, Show, untrack } from 'solid-js'
import { createIntakeClient, type Progress } from '../../intake/connect'
import type { Imported } from '../../intake/job'
import { knownQuantities } from '../../intake/known'
import type { Answers, ColumnAnswer } from '../../intake/understanding'
import { isProblem, type Problem } from '../../words/problem'
import { say } from '../../words/say'
import { Problems } from '../notebooks/Problems'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { Columns } from './Columns'
import { createKeeping, type Keeping } from './createKeeping'
import { ImportView } from './ImportView'
import { keptMappings } from './keptMappings'
import { setLabFile } from './labFile'
import { type LabImport, labImportOf } from './labImport'
import { MappingForm } from './MappingForm'
import { ProgressLine } from './ProgressLine'
import { Questions } from './Questions'
import { type LabReading, readLab } from './readLab'

interface Found {
  readonly source: LabImport
  readonly keeping: Keeping
  readonly refused: Imported['refused']
}

const NOTHING = { understanding: null, imported: null }

/** A lab file that was chosen: how it was understood, what it leaves open, then its samples. */
export function ReadFile(props: { file: File }) {
  const book = useBook()
  const client = createIntakeClient()
  const [answers, setAnswers] = createSignal<Answers>({})
  const [byMapping, setByMapping] = createSignal(true)
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const [progress, setProgress] = createSignal<Progress | null>(null)
  const [understood, setUnderstood] = createSignal<LabReading | null>(null)
  const [found, setFound] = createSignal<Found | null>(null)
  let reading = new AbortController()
  onCleanup(() => {
    reading.abort()
    client.close()
  })

  // Only what is entered: a worked-out quantity in a file stays a note.
  const known = createMemo(() =>
    knownQuantities(book.catalog().worksheets).filter(
      ({ accept, choices }) => accept !== undefined || choices !== undefined,
    ),
  )
  createEffect(() => void read(answers(), byMapping()))

  async function read(given: Answers, mapped: boolean): Promise<void> {
    reading.abort()
    const mine = new AbortController()
    reading = mine
    const still =
      <T,>(tell: (now: T) => void) =>
      (now: T) => {
        if (mine === reading) tell(now)
      }
    const mappings = mapped ? await keptMappings() : []
    const watch = { understood: still(setUnderstood), progress: still(setProgress) }
    const found = await readLab(client, props.file, untrack(known), given, mappings, watch, mine.signal)
    if (mine !== reading) return
    setProgress(null)
    setProblems(isProblem(found) ? [found] : [])
    const { understanding, imported } = isProblem(found) || !found ? NOTHING : found
    if (!understanding || !imported) return void setFound(null)
    const source = labImportOf(props.file, understanding, imported, Date.now())
    setFound({ source, keeping: createKeeping(source, props.file), refused: imported.refused })
  }

  function cancel(): void {
    reading.abort()
    announce(say('page.lab.cancelled', { name: props.file.name }))
    setLabFile(null)
  }

  function answerColumn(heading: string, answer: ColumnAnswer): void {
    const before = answers().columns ?? {}
    setAnswers({ ...answers(), columns: { ...before, [heading]: { ...before[heading], ...answer } } })
  }

  return (
    <>
      <Show when={progress()}>
        {(now) => (
          <ProgressLine
            label={say('page.lab.progress', { name: props.file.name })}
            done={now().bytes}
            total={now().total}
            says={say('page.lab.rows_so_far', { rows: now().rows })}
            onCancel={cancel}
          />
        )}
      </Show>
      <Problems problems={problems()} />
      <Show when={understood()}>
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
              <MappingForm
                understanding={now().understanding}
                mapping={now().mapping}
                onDrop={() => setByMapping(false)}
              />
              <Problems problems={now().understanding.doubts} />
            </Show>
          </>
        )}
      </Show>
      <Show when={found()} keyed>
        {({ source, keeping, refused }) => <ImportView source={source} keeping={keeping} refused={refused} />}
      </Show>
    </>
  )
}
