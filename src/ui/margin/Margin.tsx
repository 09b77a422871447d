import { createMemo, For, lazy, Show, Suspense } from 'solid-js'
import { hasValue } from '../../engine/outcome'
import { say } from '../../words/say'
import { cautionText } from '../cautionText'
import { bandIn } from '../grid/bandIn'
import { cellView } from '../grid/cellView'
import { verdict } from '../grid/findingsOf'
import { RangeBar } from '../grid/RangeBar'
import { UnitText } from '../grid/UnitText'
import { helpOf, labelOf } from '../labelOf'
import { noticeText } from '../noticeText'
import { problemText } from '../problemText'
import { useBook } from '../shell/book'
import { drawnLater } from '../shell/drawnLater'
import type { Cell } from '../shell/selection'
import { CellActs } from './CellActs'

// The functions with their equations and sources are fetched when the first numbers have been drawn.
const Explained = lazy(async () => {
  await new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn)))
  return { default: (await import('./Explained')).Explained }
})

// How sure a value is takes a thousand columns in a worker of their own: that begins when the page has nothing better to do.
const SurenessNote = lazy(async () => {
  await new Promise<void>((idle) => {
    if ('requestIdleCallback' in globalThis) requestIdleCallback(() => idle(), { timeout: 3000 })
    else setTimeout(idle, 1000)
  })
  return { default: (await import('../study/SurenessNote')).SurenessNote }
})

/** The margin beside the page: everything that is known of the selected cell. */
export function Margin(props: { open: boolean; onClose: () => void }) {
  const book = useBook()
  // Neither a held arrow key nor the engine's answer waits for the margin.
  const cell = drawnLater(book.selection.cell)
  return (
    <aside class="margin" id="margin" classList={{ open: props.open }} aria-label={say('page.margin')} tabindex={-1}>
      <button type="button" class="act close" onClick={() => props.onClose()}>
        {say('page.close')}
      </button>
      <Show when={cell()}>{(selected) => <CellNotes cell={selected()} />}</Show>
    </aside>
  )
}

function CellNotes(props: { cell: Cell }) {
  const book = useBook()
  const quantity = () => props.cell.row.quantity
  const scenario = () => props.cell.scenario
  const outcome = () => book.outcome(scenario(), quantity().name)
  const band = createMemo(() => bandIn(book, quantity().row, scenario()))
  const view = createMemo(() =>
    cellView({
      row: quantity().row,
      outcome: outcome(),
      base: scenario() === book.baseline() ? undefined : book.outcome(book.baseline(), quantity().name),
      source: book.source(scenario(), quantity().name),
      unit: book.unit(quantity().name),
      band: band(),
      refused: quantity().refused,
    }),
  )
  const trouble = () => {
    const now = outcome()
    return now === undefined || hasValue(now) ? null : now.problem
  }
  const number = () => {
    const now = outcome()
    return hasValue(now) && typeof now.value === 'number' ? now.value : undefined
  }
  const meaning = () => {
    const problem = trouble()
    if (problem) return problemText(problem, quantity())
    const [side, wanted] = [view().side, band()]
    return side && wanted ? verdict(quantity().name, side, wanted, book) : ''
  }

  return (
    <>
      <p class="quiet">{book.scenario(scenario())?.name}</p>
      <Show when={book.scenario(scenario())?.note}>{(note) => <p class="scenario-note quiet">{note()}</p>}</Show>
      <h2>{labelOf(quantity().name, quantity().row)}</h2>
      <p class="large" classList={{ out: view().side === 'below' || view().side === 'above' }}>
        <Show when={view().figures} fallback={<span class="word">{trouble() ? '' : view().text}</span>}>
          {(figures) => (
            <>
              {figures().whole}
              {figures().fraction}
              <span class="unit">
                <UnitText unit={book.unit(quantity().name)} />
              </span>
            </>
          )}
        </Show>
      </p>
      <Show when={quantity().row.range && number() !== undefined && quantity().row.range}>
        {(span) => <RangeBar span={span()} band={band()} value={number()} side={view().side} />}
      </Show>
      <Show when={outcome() !== undefined}>
        <Suspense>
          <SurenessNote cell={props.cell} />
        </Suspense>
      </Show>
      <Show when={meaning()}>
        {(text) => <p classList={{ out: view().side === 'below' || view().side === 'above' }}>{text()}</p>}
      </Show>
      <p class="help">{helpOf(quantity().name, quantity().row)}</p>
      <For each={view().notices}>{(notice) => <p class="note">* {noticeText(notice)}</p>}</For>
      <CellActs cell={props.cell} />
      <Show when={quantity().row.cautions}>
        {(cautions) => (
          <section>
            <h3>{say('page.cautions')}</h3>
            <For each={cautions()}>{(caution) => <p>{cautionText(caution)}</p>}</For>
          </section>
        )}
      </Show>
      <Show when={outcome() !== undefined}>
        <Suspense>
          <Explained cell={props.cell} band={band()} />
        </Suspense>
      </Show>
    </>
  )
}
