import { createResource, createSignal, Show } from 'solid-js'
import type { RowOutcome } from '../../intake/outcome'
import { isProblem, type Problem } from '../../words/problem'
import { say } from '../../words/say'
import { Problems } from '../notebooks/Problems'
import { ResultsView } from '../results/ResultsView'
import { announce } from '../shell/announce'
import { AccountLine } from './AccountLine'
import { fileFacts } from './fileFacts'
import type { LabImport } from './labImport'
import { withLabStore } from './labStore'
import { Refused } from './Refused'

/** A lab file that was read in: its account, what was refused, its samples and all that can be done with them. */
export function ImportView(props: {
  source: LabImport
  /** the first refused rows, where the file has just been read */
  refused: readonly Extract<RowOutcome, { kind: 'refused' }>[]
  kept: boolean
  onKept?: () => void
}) {
  const [problem, setProblem] = createSignal<Problem | null>(null)
  const [keeping, setKeeping] = createSignal(false)
  const head = () => props.source.head

  async function keep(): Promise<void> {
    setKeeping(true)
    const { columns, refusedCsv } = props.source
    const trouble = await withLabStore((store) => store.put(head(), { columns, refusedCsv }))
    setKeeping(false)
    setProblem(trouble ?? null)
    if (trouble) return
    announce(say('page.lab.kept_now', { name: head().name }))
    props.onKept?.()
  }

  return (
    <>
      <AccountLine account={head().account} />
      <p class="quiet facts">
        {fileFacts(head())}{' '}
        <Show
          when={props.kept}
          fallback={
            <button type="button" class="link" disabled={keeping()} onClick={keep}>
              {say('page.lab.keep')}
            </button>
          }
        >
          {say('page.lab.is_kept')}
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
        <ResultsView source={props.source} />
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
        {(now) => <ImportView source={now} refused={[]} kept={true} />}
      </Show>
    </>
  )
}
