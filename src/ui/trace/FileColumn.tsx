import { createResource, Show } from 'solid-js'
import { isProblem } from '../../words/problem'
import { say } from '../../words/say'

/** The heading of the column that a reading stood under, where this browser keeps the lab file that it came from. */
export function FileColumn(props: { file: string; quantity: string }) {
  const [heading] = createResource(
    () => ({ file: props.file, quantity: props.quantity }),
    async ({ file, quantity }) => {
      const { withLabStore } = await import('../lab/labStore')
      const heads = await withLabStore((store) => store.list())
      return isProblem(heads) ? undefined : heads.find(({ id }) => id === file)?.headings[quantity]
    },
  )
  return <Show when={heading.latest}>{(text) => <p>{say('trace.column', { heading: text() })}</p>}</Show>
}
