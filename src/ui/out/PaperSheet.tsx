import { createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js'
import type { Sheet, SheetCell } from '../../out/sheet'
import { say } from '../../words/say'
import { UnitText } from '../grid/UnitText'
import { fitOnPage } from './fitOnPage'

/** A worksheet as it is printed: a plain table, on one page whatever it holds. Rows without any value take no paper. */
export function PaperSheet(props: { sheet: Sheet; notebook: string; onScale: (scale: number) => void }) {
  let paper: HTMLElement | undefined
  const [placed, setPlaced] = createSignal({ scale: 1, wide: false })
  const groups = createMemo(() =>
    props.sheet.groups
      .map(({ label, rows }) => ({ label, rows: rows.filter(({ cells }) => cells.some(speaks)) }))
      .filter(({ rows }) => rows.length > 0),
  )
  const assumed = () => groups().some(({ rows }) => rows.some(({ cells }) => cells.some((cell) => cell.assumed)))
  const sampled = () => props.sheet.scenarios.some(({ sample }) => sample !== '')

  // Its size changes once more when the typefaces have come; while it is printed it is shrunk already.
  const sizes = new ResizeObserver(() => {
    if (!paper || matchMedia('print').matches) return
    const found = fitOnPage(paper.offsetWidth, paper.offsetHeight)
    setPlaced(found)
    props.onScale(found.scale)
  })
  onMount(() => paper && sizes.observe(paper))
  onCleanup(() => sizes.disconnect())

  return (
    <div
      class="paper-frame"
      classList={{ wide: placed().wide }}
      tabindex={0}
      role="region"
      aria-label={props.sheet.title}
    >
      <figure class="paper" ref={paper} style={{ '--fit': placed().scale }}>
        <table>
          <thead>
            <tr class="name">
              <th scope="col">
                {props.sheet.title}
                <small>{props.notebook}</small>
              </th>
              <th scope="col">{say('page.col.unit')}</th>
              <For each={props.sheet.scenarios}>
                {({ name, sample }) => (
                  <th scope="col" class="figure">
                    {name}
                    <Show when={sampled()}>
                      <small>{sample}</small>
                    </Show>
                  </th>
                )}
              </For>
            </tr>
          </thead>
          <For each={groups()} fallback={<Empty columns={props.sheet.scenarios.length + 2} />}>
            {({ label, rows }) => (
              <tbody>
                <tr class="group">
                  <th scope="rowgroup" colspan={props.sheet.scenarios.length + 2}>
                    {label}
                  </th>
                </tr>
                <For each={rows}>
                  {(row) => (
                    <tr>
                      <th scope="row">{row.label}</th>
                      <td class="unit">
                        <UnitText unit={row.unit} />
                      </td>
                      <For each={row.cells}>
                        {(cell) => (
                          <td class="figure">
                            {speaks(cell) ? cell.shown : ''}
                            {cell.assumed ? ' †' : ''}
                          </td>
                        )}
                      </For>
                    </tr>
                  )}
                </For>
              </tbody>
            )}
          </For>
        </table>
        <figcaption>
          <Show when={assumed()}>
            <p>{say('out.assumed_mark')}</p>
          </Show>
          <p>{say('page.codes_first')}</p>
        </figcaption>
      </figure>
    </div>
  )
}

function Empty(props: { columns: number }) {
  return (
    <tbody>
      <tr>
        <td colspan={props.columns}>{say('out.empty')}</td>
      </tr>
    </tbody>
  )
}

/** A cell that only waits for readings, or has no answer, says nothing on paper. */
function speaks({ value }: SheetCell): boolean {
  return value !== null
}
