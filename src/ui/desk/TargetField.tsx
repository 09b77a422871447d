import { For, Show } from 'solid-js'
import type { SimpleEdit } from '../../notebook/edit'
import { convert } from '../../units/convert'
import { formatValue } from '../../units/format'
import { locale } from '../../words/locale'
import { isProblem } from '../../words/problem'
import { say } from '../../words/say'
import { decimalsOf } from '../decimalsOf'
import { labelInside, labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { unitWords } from '../unitWords'
import { moveOn } from './chain'
import { readFor } from './commitReading'
import { EntryField } from './EntryField'
import { middleOf, TARGET_NAMES } from './middles'
import { useDeskPlace } from './placeContext'

/** What the plan aims for: offered from the ranges for this pool in one act, each to be changed. */
export function TargetField() {
  const book = useBook()
  const place = useDeskPlace()
  const offered = () =>
    TARGET_NAMES.flatMap((target) => {
      const middle = middleOf(book, target)
      const open = book.source(book.baseline(), target).cell === null
      return middle && open ? [{ target, ...middle }] : []
    })
  const words = (target: string, value: number) => {
    const row = book.catalog().quantities.get(target)?.row
    if (!row) return ''
    const unit = book.unit(target)
    return `${labelInside(target, row)} ${formatValue(value, row.unit, unit, decimalsOf(row))} ${unitWords(unit)}`.trim()
  }
  const sources = () => [...new Set(offered().map(({ source }) => source))].join(' ')

  function take(from: Element): void {
    const scenario = book.baseline()
    const edits = offered().flatMap(({ target, value }): SimpleEdit[] => {
      const unit = book.unit(target)
      const shown = convert(value, book.catalog().quantities.get(target)?.row.unit ?? '1', unit)
      if (isProblem(shown)) return []
      const entered = String(Number(shown.toPrecision(3))).replace('.', locale().decimal)
      const cell = readFor(book, target, entered)
      return isProblem(cell) ? [] : [{ type: 'set_cell', scenario, quantity: target, cell }]
    })
    if (edits.length > 0) book.dispatch({ type: 'together', edits })
    moveOn(from)
  }

  return (
    <fieldset class="targets">
      <legend>{say('page.desk.targets')}</legend>
      <p class="quiet">{say('page.desk.targets_help')}</p>
      <Show when={offered().length > 0}>
        <p>
          {offered()
            .map(({ target, value }) => words(target, value))
            .join(' · ')}
        </p>
        <p class="quiet">{say('page.desk.targets_from', { source: sources() })}</p>
      </Show>
      <button
        type="button"
        class="act main"
        data-desk="targets"
        disabled={!book.writable()}
        hidden={offered().length === 0}
        onFocus={() => place.at('targets')}
        onClick={(event) => take(event.currentTarget)}
      >
        {say('page.desk.take_targets')}
      </button>
      <For each={TARGET_NAMES}>
        {(target) => (
          <EntryField quantity={target} aside label={labelOf(target, book.catalog().quantities.get(target)?.row)} />
        )}
      </For>
    </fieldset>
  )
}
