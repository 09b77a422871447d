import { createSignal, Show } from 'solid-js'
import { say, sentence } from '../../words/say'
import { useBook } from '../shell/book'
import { prepareFormulas } from '../shell/formulas'

/** Calcium as a share of total hardness, where the calcium itself was not tested: a state code's rule, to be seen as a formula. */
const RULE = '0.7 * total_hardness'

/** Offers calcium from total hardness; never taken without being asked for, and to be seen in the grid as what it is. */
export function AssumeCalcium() {
  const book = useBook()
  const [refused, setRefused] = createSignal('')
  const cell = (quantity: string) => book.source(book.baseline(), quantity).cell
  const offered = () => cell('total_hardness')?.kind === 'value' && cell('calcium_hardness')?.kind !== 'value'
  const assumed = () => cell('calcium_hardness')?.kind === 'formula'

  async function assume(): Promise<void> {
    await prepareFormulas()
    const scenario = book.baseline()
    const why = book.dispatch({
      type: 'set_cell',
      scenario,
      quantity: 'calcium_hardness',
      cell: assumed() ? null : { kind: 'formula', text: RULE },
    })
    setRefused(why ? sentence(why) : '')
  }

  return (
    <Show when={offered()}>
      <p class="acts">
        <button type="button" class="act" aria-pressed={assumed()} disabled={!book.writable()} onClick={assume}>
          {say('page.desk.assume_calcium')}
        </button>
        <Show when={refused()}>{(why) => <span class="warm">{why()}</span>}</Show>
      </p>
    </Show>
  )
}
