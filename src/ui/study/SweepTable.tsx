import { createSignal, For, Show } from 'solid-js'
import { say } from '../../words/say'
import { Wide } from '../shell/Wide'
import { titleOf } from './axis'
import type { SweepModel } from './sweepModel'

/** The points behind a chart, drawn up when it is opened. */
export function SweepTable(props: { model: SweepModel }) {
  const [open, setOpen] = createSignal(false)
  const columns = () => props.model.panels.flatMap(({ axis, curves }) => curves.map((curve) => ({ axis, curve })))
  return (
    <details class="points" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{say('page.study.table')}</summary>
      <Show when={open()}>
        <Wide label={say('page.study.table')}>
          <table>
            <thead>
              <tr>
                <th scope="col">{titleOf(props.model.input)}</th>
                <For each={columns()}>
                  {({ axis, curve }) => (
                    <th scope="col">
                      {titleOf(axis)}
                      <br />
                      <span class="quiet">{curve.name}</span>
                    </th>
                  )}
                </For>
              </tr>
            </thead>
            <tbody>
              <For each={props.model.at}>
                {(value, i) => (
                  <tr>
                    <th scope="row">{props.model.input.figure(value)}</th>
                    <For each={columns()}>
                      {({ axis, curve }) => {
                        const point = curve.values[i()] ?? null
                        return <td>{point === null ? say('page.study.no_answer') : axis.figure(point)}</td>
                      }}
                    </For>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </Wide>
      </Show>
    </details>
  )
}
