import '../trace/trace.css'
import { createMemo, createResource, For, Show } from 'solid-js'
import { type Assumption, assumptionsOf } from '../../notebook/assumptions'
import { cellKey } from '../../notebook/notebook'
import { together } from '../../notebook/together'
import { assumptions as words } from '../../words/en/assumptions'
import { addWords, say, sentence } from '../../words/say'
import { labelOf } from '../labelOf'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { formulas, prepareFormulas } from '../shell/formulas'
import { Wide } from '../shell/Wide'
import { cellText, outcomeText } from '../trace/outcomeText'
import { ToCell } from '../trace/ToCell'

addWords(words)

/** Every value that was typed over what the notebook works out, what its formula would give, and the way back. */
export function AssumptionsPage() {
  const book = useBook()
  const list = createMemo(() => assumptionsOf(book.notebook(), book.catalog()))
  /** asked anew at every edit: any reading can move what a formula gives */
  const [given] = createResource(
    () => ({ cells: list(), of: book.notebook() }),
    async ({ cells }) => {
      await prepareFormulas()
      const outcomes = await book.formulasUnder(cells.map(({ scenario, quantity }) => ({ scenario, quantity })))
      return new Map(outcomes.map(({ scenario, quantity, outcome }) => [cellKey(scenario, quantity), outcome]))
    },
  )

  function remove(removed: readonly Assumption[]): void {
    const edits = removed.map(
      ({ scenario, quantity }) => ({ type: 'set_cell', scenario, quantity, cell: null }) as const,
    )
    const trouble = book.dispatch(together(...edits))
    announce(trouble ? sentence(trouble) : say('assumptions.removed', { count: removed.length }))
  }

  function typed({ scenario, quantity, cell }: Assumption): string {
    const value = cellText(book, scenario, quantity)
    if (cell.kind !== 'formula') return value
    // Read with the resource, which fetched what shows formulas with the names of their scenarios.
    const formula = given.latest && formulas()?.toShown(cell.text, book.notebook())
    return formula ? say('assumptions.as_formula', { value, formula }) : value
  }

  return (
    <article class="text-page traced">
      <h1>{say('page.title.assumptions')}</h1>
      <p class="intro">{say('assumptions.intro')}</p>
      <Show when={list().length > 0} fallback={<p>{say('assumptions.none')}</p>}>
        <Wide label={say('page.title.assumptions')}>
          <table>
            <thead>
              <tr>
                <th scope="col">{say('assumptions.col.quantity')}</th>
                <th scope="col">{say('assumptions.col.scenario')}</th>
                <th scope="col">{say('assumptions.col.typed')}</th>
                <th scope="col">{say('assumptions.col.formula')}</th>
                <td />
              </tr>
            </thead>
            <tbody>
              <For each={list()}>
                {(one) => (
                  <tr>
                    <th scope="row">
                      <ToCell place={one} />
                    </th>
                    <td>
                      {book.scenario(one.scenario)?.name}
                      <Show when={followers(one) > 0}>
                        <small>{say('assumptions.followed', { count: followers(one) })}</small>
                      </Show>
                    </td>
                    <td class="pen">{typed(one)}</td>
                    <td>
                      {given.latest?.has(cellKey(one.scenario, one.quantity))
                        ? outcomeText(book, one.quantity, given.latest.get(cellKey(one.scenario, one.quantity)))
                        : say('assumptions.working')}
                    </td>
                    <td>
                      <button
                        type="button"
                        class="act"
                        disabled={!book.writable()}
                        aria-label={say('assumptions.remove_one', {
                          name: labelOf(one.quantity, book.catalog().quantities.get(one.quantity)?.row),
                          scenario: book.scenario(one.scenario)?.name ?? '',
                        })}
                        onClick={() => remove([one])}
                      >
                        {say('assumptions.remove')}
                      </button>
                    </td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </Wide>
        <div class="acts">
          <button type="button" class="act" disabled={!book.writable()} onClick={() => remove(list())}>
            {say('assumptions.remove_all')}
          </button>
        </div>
      </Show>
    </article>
  )

  /** How many scenarios have the baseline's assumption, having nothing of their own there. */
  function followers({ scenario, quantity }: Assumption): number {
    if (scenario !== book.baseline()) return 0
    return book.scenarios().filter((id) => book.source(id, quantity).from === 'baseline').length
  }
}
