import { createMemo, createSignal, For, Show, untrack } from 'solid-js'
import { hasWords, say } from '../../words/say'
import type { Definition } from '../../worksheet/definition'
import { afterDrawing } from '../shell/afterDrawing'
import { useBook } from '../shell/book'
import { Unhurried } from '../shell/Unhurried'
import { Cautions } from './Cautions'
import { FEW, useDrawn } from './drawn'
import { Findings } from './Findings'
import { FoldButton } from './FoldButton'
import { GridHead } from './GridHead'
import { GridRowView } from './GridRowView'
import { type GridGroup, groupsOf } from './gridRow'
import { foldId } from './line'
import { openOver } from './opened'
import { worksheetLabel } from './worksheetLabel'

/** Groups of rows that come with a worksheet of many scenarios; the others come a frame later, so that the page is not held for long. */
const FIRST_GROUPS = 2

/** One worksheet: its name, what it is for, its grid, and what stands out in it. */
export function WorksheetView(props: { definition: Definition; number: number }) {
  const book = useBook()
  const drawn = useDrawn()
  const id = () => props.definition.id
  const isFolded = (group?: string) => book.arrangement.folded().has(foldId(id(), group))
  const groups = createMemo(() => groupsOf(props.definition, book.catalog()))
  const help = () => {
    const key = `worksheet.${id()}.help`
    return props.definition.help ?? (hasWords(key) ? say(key) : '')
  }
  /** the row's place in the grid: the heading is row 1, and each group's heading is a row too */
  const places = () => {
    let place = 1
    return groups().map((group) => {
      const first = place + 1
      place += 1 + group.rows.length
      return first
    })
  }
  const rowCount = () => groups().reduce((sum, group) => sum + 1 + group.rows.length, 1)
  const later = () => book.scenarios().length - 1
  const [most, setMost] = createSignal(untrack(book.scenarios).length > FEW ? FIRST_GROUPS : Number.POSITIVE_INFINITY)
  afterDrawing(() => setMost(Number.POSITIVE_INFINITY))

  return (
    <section
      class="worksheet"
      classList={{ folded: isFolded() }}
      id={`worksheet-${id()}`}
      aria-labelledby={`title-${id()}`}
    >
      <header class="still">
        <h2 id={`title-${id()}`} tabindex={-1}>
          <FoldButton id={foldId(id())}>
            <span class="number">{props.number}</span>
            {worksheetLabel(props.definition)}
          </FoldButton>
        </h2>
        <Show when={help()}>{(text) => <p>{text()}</p>}</Show>
      </header>
      <Show when={!isFolded()}>
        <div
          class="grid"
          role="grid"
          aria-labelledby={`title-${id()}`}
          aria-multiselectable="true"
          aria-colcount={book.scenarios().length + 3}
          aria-rowcount={rowCount()}
          style={{ '--count': later(), '--extra': `${drawn.extra()}px` }}
        >
          <GridHead worksheet={id()} />
          <For each={groups().slice(0, most())}>
            {(group, index) => (
              <>
                <GroupHead group={group} worksheet={id()} place={places()[index()] ?? 2} />
                <Show when={!isFolded(group.id)}>
                  <For each={group.rows}>
                    {(row, at) => <GridRowView row={row} index={(places()[index()] ?? 2) + at() + 1} />}
                  </For>
                </Show>
              </>
            )}
          </For>
        </div>
        <Show when={rowCount() === 1 + groups().length}>
          <FirstRow definition={props.definition} />
        </Show>
        <Unhurried>
          <Findings definition={props.definition} />
          <Cautions definition={props.definition} />
        </Unhurried>
        <Show when={hasWords(`worksheet.${id()}.example`)}>
          <details class="example still">
            <summary>{say('page.example')}</summary>
            <p>{say(`worksheet.${id()}.example`)}</p>
          </details>
        </Show>
      </Show>
    </section>
  )
}

/** Where a worksheet of one's own has no row yet, from whose menu others could be added. */
function FirstRow(props: { definition: Definition }) {
  const book = useBook()
  function add(): void {
    const { id } = props.definition
    const head = { name: '', unit: '1', label: worksheetLabel(props.definition), formula: '' }
    const quantity = { name: '', row: head, worksheet: id, index: 0, formula: null, reads: [], readBy: [], calls: [] }
    openOver({ what: 'row', act: 'add', row: { key: id, worksheet: id, group: '', quantity } })
  }
  return (
    <p class="first-row still">
      <button type="button" class="act" disabled={!book.writable()} onClick={add}>
        {say('page.add_first_row')}
      </button>
    </p>
  )
}

function GroupHead(props: { group: GridGroup; worksheet: string; place: number }) {
  const book = useBook()
  const id = () => foldId(props.worksheet, props.group.id)
  const label = () => {
    const key = `group.${props.worksheet}.${props.group.id}`
    return props.group.label ?? (hasWords(key) ? say(key) : props.group.id.replaceAll('_', ' '))
  }
  return (
    <div role="row" class="row group" aria-rowindex={props.place}>
      <div role="rowheader">
        <FoldButton id={id()}>
          {label()}
          <Show when={book.arrangement.folded().has(id())}>
            <span class="count">{say('page.rows_folded', { count: props.group.rows.length })}</span>
          </Show>
        </FoldButton>
      </div>
    </div>
  )
}
