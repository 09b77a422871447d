import { createSignal, For, Match, Show, Switch } from 'solid-js'
import { convert } from '../../units/convert'
import { formatValue } from '../../units/format'
import { readNumber } from '../../units/readNumber'
import { locale } from '../../words/locale'
import { say } from '../../words/say'
import { decimalsOf } from '../decimalsOf'
import { unitWords } from '../unitWords'
import type { Table } from './createTable'
import type { RowFilter } from './rowFilter'
import type { TableColumn } from './tableColumn'

type How = RowFilter['how']

const OF_FIGURES: readonly How[] = ['range', 'value', 'missing', 'censored', 'refused']
const OF_BANDS: readonly How[] = [
  'range',
  'outside',
  'below',
  'within',
  'above',
  'value',
  'missing',
  'censored',
  'refused',
]
const OF_TEXTS: readonly How[] = ['text', 'value', 'missing']

/** The conditions that samples must meet to be shown: those that hold, and one more to add. */
export function FilterForm(props: { table: Table }) {
  const [key, setKey] = createSignal('')
  const [how, setHow] = createSignal<How>('text')
  const column = () => props.table.columns().find((one) => one.key === key())
  const hows = (): readonly How[] => {
    const of = column()
    if (!of) return ['text']
    if (of.kind === 'text') return OF_TEXTS
    return of.band ? OF_BANDS : OF_FIGURES
  }

  function pick(next: string): void {
    setKey(next)
    setHow(hows()[0] ?? 'text')
  }

  function add(form: FormData): void {
    const filter = filterFrom(column(), how(), (field) => String(form.get(field) ?? ''))
    if (filter) props.table.setFilters([...props.table.filters(), filter])
  }

  return (
    <form
      class="filter"
      onSubmit={(event) => {
        event.preventDefault()
        add(new FormData(event.currentTarget))
      }}
    >
      <label>
        {say('page.results.where')}
        <select class="field" onChange={(event) => pick(event.currentTarget.value)}>
          <option value="">{say('page.results.anything')}</option>
          <For each={props.table.columns()}>{(one) => <option value={one.key}>{one.label}</option>}</For>
        </select>
      </label>
      <label>
        {say('page.results.how')}
        <select class="field" value={how()} onChange={(event) => setHow(event.currentTarget.value as How)}>
          <For each={hows()}>{(one) => <option value={one}>{say(`page.results.how.${one}`)}</option>}</For>
        </select>
      </label>
      <Switch>
        <Match when={how() === 'text'}>
          <label>
            {say('page.results.text')}
            <input class="field" name="text" autocomplete="off" />
          </label>
        </Match>
        <Match when={how() === 'range'}>
          <label class="short">
            {say('page.results.from')} {unitWords(column()?.unit ?? '')}
            <input class="field" name="from" inputmode="decimal" autocomplete="off" />
          </label>
          <label class="short">
            {say('page.results.to')} {unitWords(column()?.unit ?? '')}
            <input class="field" name="to" inputmode="decimal" autocomplete="off" />
          </label>
        </Match>
      </Switch>
      <button type="submit" class="act">
        {say('page.results.add')}
      </button>
      <Show when={props.table.filters().length > 0}>
        <ul class="filters">
          <For each={props.table.filters()}>
            {(filter) => {
              const what = () => described(filter, props.table.columns())
              return (
                <li>
                  {what()}{' '}
                  <button
                    type="button"
                    class="link"
                    aria-label={say('page.results.filter.remove', { what: what() })}
                    onClick={() => props.table.setFilters(props.table.filters().filter((other) => other !== filter))}
                  >
                    ×
                  </button>
                </li>
              )
            }}
          </For>
        </ul>
      </Show>
    </form>
  )
}

/** Null where nothing was said to hold the samples to. */
function filterFrom(column: TableColumn | undefined, how: How, field: (name: string) => string): RowFilter | null {
  if (how === 'text') {
    const text = field('text').trim()
    return text === '' ? null : { how, column: column?.key ?? null, text }
  }
  if (!column) return null
  if (how !== 'range') return { how, column: column.key }
  const [from, to] = [limitIn(field('from'), column), limitIn(field('to'), column)]
  return from === null && to === null ? null : { how, column: column.key, from, to }
}

/** What was entered in the shown unit, in the canonical one. */
function limitIn(entered: string, { unit, row }: TableColumn): number | null {
  const read = readNumber(entered.trim(), locale().decimal)
  if (read === null) return null
  const value = row ? convert(read.value, unit, row.unit) : read.value
  return typeof value === 'number' ? value : null
}

function described(filter: RowFilter, columns: readonly TableColumn[]): string {
  const column = columns.find(({ key }) => key === filter.column)
  const name = column?.label ?? say('page.results.anything')
  if (filter.how === 'text') return say('page.results.filter.text', { name, text: filter.text })
  if (filter.how !== 'range')
    return say('page.results.filter.other', { name, how: say(`page.results.how.${filter.how}`) })
  const shown = (value: number | null) =>
    value === null || !column?.row
      ? String(value ?? '')
      : formatValue(value, column.row.unit, column.unit, decimalsOf(column.row))
  const [from, to] = [shown(filter.from), shown(filter.to)]
  if (filter.to === null) return say('page.results.filter.from', { name, from })
  return filter.from === null
    ? say('page.results.filter.to', { name, to })
    : say('page.results.filter.range', { name, from, to })
}
