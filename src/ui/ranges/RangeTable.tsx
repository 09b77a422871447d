import { createSignal, For } from 'solid-js'
import { formatValue } from '../../units/format'
import { parseEntry } from '../../units/parseEntry'
import { isProblem, type Problem, problem } from '../../words/problem'
import { say } from '../../words/say'
import type { TargetSet } from '../../worksheet/definition'
import { addBand, changeBand, ownSet, removeBand } from '../../worksheet/targetCopy'
import { decimalsOf } from '../decimalsOf'
import { labelOf } from '../labelOf'
import { downloadText } from '../notebooks/downloadText'
import { Problems } from '../notebooks/Problems'
import { useBook } from '../shell/book'
import { unitWords } from '../unitWords'
import { whenWords } from './whenWords'

/** One copied set: each band with its ends and what it goes by, to be changed in place. */
export function RangeTable(props: { set: TargetSet; name: string }) {
  const book = useBook()
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const row = (quantity: string) => book.catalog().quantities.get(quantity)?.row
  const label = (quantity: string) => labelOf(quantity, row(quantity))
  const lines = () =>
    Object.entries(props.set.bands).flatMap(([quantity, list]) => list.map((band, at) => ({ quantity, band, at })))
  const addable = () =>
    [...book.catalog().quantities.values()].filter((one) => one.row.target !== undefined).map((one) => one.name)

  function keep(set: TargetSet): void {
    const trouble = book.dispatch({ type: 'put_worksheet', id: set.id, definition: ownSet(set) })
    setProblems(trouble ? [trouble] : [])
  }

  function shown(quantity: string, value: number | undefined): string {
    const of = row(quantity)
    return value === undefined || !of ? '' : formatValue(value, of.unit, book.unit(quantity), decimalsOf(of))
  }

  /** One end, as it was typed; an empty one is taken away. False, and a sentence, where it cannot be. */
  function change(quantity: string, at: number, end: 'low' | 'high', typed: string): boolean {
    const of = row(quantity)
    const band = props.set.bands[quantity]?.[at]
    if (!of || !band) return false
    const entry = parseEntry(typed, of.unit, {
      profile: book.notebook().profile,
      displayed: book.unit(quantity),
      quantity,
    })
    if (isProblem(entry)) return refuse({ ...entry, path: [label(quantity)] })
    const value = entry === null || entry === 'not_taken' ? undefined : entry.canonical
    const next = { low: band.low, high: band.high, [end]: value }
    if (next.low === undefined && next.high === undefined) return refuse(problem('range_empty', [label(quantity)]))
    if (next.low !== undefined && next.high !== undefined && next.low >= next.high)
      return refuse(problem('range_order', [label(quantity)]))
    const source = marked(band.source ?? props.set.source)
    keep(changeBand(props.set, quantity, at, { ...next, source }))
    return true
  }

  /** What a changed band goes by says so, once. */
  function marked(source: string): string {
    const set = props.set.from ?? props.name
    const mark = say('page.ranges.changed_from', { set, source: '' }).trimEnd()
    return source.startsWith(mark) ? source : say('page.ranges.changed_from', { set, source })
  }

  function refuse(fault: Problem): false {
    setProblems([fault])
    return false
  }

  return (
    <section class="copied">
      <h3>{props.name}</h3>
      <table aria-label={say('page.ranges.table_of', { set: props.name })}>
        <thead>
          <tr>
            <th scope="col">{say('page.ranges.quantity')}</th>
            <th scope="col">{say('page.ranges.when')}</th>
            <th scope="col">{say('page.ranges.low')}</th>
            <th scope="col">{say('page.ranges.high')}</th>
            <th scope="col">{say('page.ranges.source')}</th>
            <td />
          </tr>
        </thead>
        <tbody>
          <For each={lines()}>
            {({ quantity, band, at }) => {
              const facts = () => ({ quantity: label(quantity), when: whenWords(book, band.when) })
              const end = (which: 'low' | 'high') => (
                <td>
                  <input
                    class="field"
                    disabled={!book.writable()}
                    aria-label={say(`page.ranges.${which}_of`, facts())}
                    value={shown(quantity, band[which])}
                    onChange={(event) => {
                      const input = event.currentTarget
                      if (!change(quantity, at, which, input.value)) input.value = shown(quantity, band[which])
                    }}
                  />
                </td>
              )
              return (
                <tr>
                  <th scope="row">
                    {label(quantity)} <span class="quiet">{unitWords(book.unit(quantity))}</span>
                  </th>
                  <td>{whenWords(book, band.when)}</td>
                  {end('low')}
                  {end('high')}
                  <td class="source">
                    <textarea
                      class="field"
                      rows={2}
                      maxlength={2000}
                      disabled={!book.writable()}
                      aria-label={say('page.ranges.source_of', facts())}
                      onChange={(event) => {
                        const source = event.currentTarget.value.trim()
                        if (source !== '') keep(changeBand(props.set, quantity, at, { source }))
                        else event.currentTarget.value = band.source ?? ''
                      }}
                    >
                      {band.source ?? props.set.source}
                    </textarea>
                  </td>
                  <td>
                    <button
                      type="button"
                      class="act"
                      disabled={!book.writable()}
                      aria-label={say('page.ranges.remove_of', facts())}
                      onClick={() => keep(removeBand(props.set, quantity, at))}
                    >
                      {say('page.ranges.remove')}
                    </button>
                  </td>
                </tr>
              )
            }}
          </For>
        </tbody>
      </table>
      <Problems problems={problems()} />
      <form
        onSubmit={(event) => {
          event.preventDefault()
          const quantity = String(new FormData(event.currentTarget).get('quantity'))
          const [low, high] = row(quantity)?.range ?? [0, 1]
          keep(addBand(props.set, quantity, { low, high, source: say('page.ranges.own_source') }))
        }}
      >
        <label>
          {say('page.ranges.add')}
          <select class="field" name="quantity">
            <For each={addable()}>{(quantity) => <option value={quantity}>{label(quantity)}</option>}</For>
          </select>
        </label>
        <button type="submit" class="act" disabled={!book.writable()}>
          {say('page.ranges.add_act')}
        </button>
        <button
          type="button"
          class="act"
          onClick={() => downloadText(`${props.set.id}.json`, `${JSON.stringify(ownSet(props.set), null, 2)}\n`)}
        >
          {say('page.ranges.export')}
        </button>
        <button
          type="button"
          class="act"
          disabled={!book.writable()}
          onClick={() => book.dispatch({ type: 'remove_worksheet', id: props.set.id })}
        >
          {say('page.ranges.remove_set')}
        </button>
      </form>
    </section>
  )
}
