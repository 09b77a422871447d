import { createResource, createSignal, Show } from 'solid-js'
import type { RowOutcome } from '../../intake/outcome'
import { isProblem, type Problem } from '../../words/problem'
import { say } from '../../words/say'
import { downloadBlob } from '../notebooks/downloadText'
import { Problems } from '../notebooks/Problems'
import { ResultsView } from '../results/ResultsView'
import { announce } from '../shell/announce'
import { AccountLine } from './AccountLine'
import { KEPT, type Keeping } from './createKeeping'
import { fileFacts } from './fileFacts'
import type { LabImport } from './labImport'
import { withLabStore } from './labStore'
import { Refused } from './Refused'

/** A lab file that was read in: its account, what was refused, its samples and all that can be done with them. */
export function ImportView(props: {
  source: LabImport
  /** the first refused rows, where the file has just been read */
  refused: readonly Extract<RowOutcome, { kind: 'refused' }>[]
  keeping: Keeping
}) {
  const [problem, setProblem] = createSignal<Problem | null>(null)
  const [underWay, setUnderWay] = createSignal(false)
  const head = () => props.source.head

  async function keep(): Promise<void> {
    setUnderWay(true)
    const trouble = await props.keeping.keep()
    setUnderWay(false)
    setProblem(trouble ?? null)
    if (!trouble) announce(say('page.lab.kept_now', { name: head().name }))
  }

  async function saveFile(): Promise<void> {
    const file = await withLabStore((store) => store.file(head().id))
    if (file instanceof Blob) downloadBlob(head().name, file)
    else setProblem(file ?? { code: 'import_file_not_kept', path: [], facts: {} })
  }

  return (
    <>
      <AccountLine account={head().account} />
      <p class="quiet facts">
        {fileFacts(head())}{' '}
        <Show
          when={props.keeping.kept()}
          fallback={
            <button type="button" class="link" disabled={underWay()} onClick={keep}>
              {say('page.lab.keep')}
            </button>
          }
        >
          {say('page.lab.is_kept')}{' '}
          <button type="button" class="link" onClick={saveFile}>
            {say('page.lab.save_file')}
          </button>
        </Show>
      </p>
      <Problems problems={problem() ? [problem() as Problem] : []} />
      <Refused
        refused={props.refused}
        count={head().account.refused}
        csv={props.source.refusedCsv}
        file={head().name}
      />
      <Show when={props.source.columns.count > 0}>
        <ResultsView source={props.source} keeping={props.keeping} />
      </Show>
    </>
  )
}

/** One that the browser keeps, by its id. */
export function KeptImport(props: { id: string }) {
  const [found] = createResource(
    () => props.id,
    (id) =>
      withLabStore(async (store): Promise<LabImport | Problem> => {
        const [heads, body] = await Promise.all([store.list(), store.body(id)])
        if (isProblem(heads)) return heads
        if (isProblem(body)) return body
        const head = heads.find((one) => one.id === id)
        return head ? { head, ...body } : { code: 'import_not_kept', path: [], facts: {} }
      }),
  )
  const source = () => {
    const now = found()
    return now && !isProblem(now) ? now : null
  }
  return (
    <>
      <Problems problems={isProblem(found()) ? [found() as Problem] : []} />
      <Show when={source()} keyed>
        {(now) => <ImportView source={now} refused={[]} keeping={KEPT} />}
      </Show>
    </>
  )
}
