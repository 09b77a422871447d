import { createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js'
import { say } from '../../words/say'
import { problemText } from '../problemText'
import { useBook } from '../shell/book'
import { DrawingView } from './DrawingView'
import { RADIUS } from './drawing'
import { drawSweep, penOf } from './drawSweep'
import { SavePicture } from './SavePicture'
import { SweepTable } from './SweepTable'
import type { SweepModel } from './sweepModel'

/** A sweep as a chart that can be read by pointer and by keyboard, with its gaps, its table and its pictures. */
export function SweepChart(props: { model: SweepModel }) {
  const book = useBook()
  const [width, setWidth] = createSignal(640)
  const [at, setAt] = createSignal<number | null>(null)
  let box!: HTMLDivElement
  onMount(() => {
    const resize = () => setWidth(Math.max(280, box.clientWidth))
    resize()
    const watch = new ResizeObserver(resize)
    watch.observe(box)
    onCleanup(() => watch.disconnect())
  })
  const drawn = createMemo(() => drawSweep(props.model, width()))
  const last = () => props.model.at.length - 1
  const place = () => Math.min(at() ?? middle(), last())
  const middle = () => Math.floor(props.model.at.length / 2)

  /** What the chart says at the point in hand, a line a panel. */
  const lines = createMemo(() => {
    const { input, at: values, panels } = props.model
    const point = `${input.label} ${input.text(values[place()] ?? 0)}`
    const read = panels.map(({ axis, curves }) =>
      curves.map(({ name, values: along }) => {
        const value = along[place()] ?? null
        return say('page.study.reading', {
          name,
          value: value === null ? say('page.study.no_answer') : axis.text(value),
        })
      }),
    )
    const [only] = read
    if (read.length === 1 && only) return [say('page.study.read_point', { input: point, readings: only.join(' · ') })]
    return [
      point,
      ...read.map((readings, p) =>
        say('page.study.read_panel', { name: panels[p]?.axis.label ?? '', readings: readings.join(' · ') }),
      ),
    ]
  })

  function onKeyDown(event: KeyboardEvent): void {
    const steps: Readonly<Record<string, number>> = {
      ArrowRight: 1,
      ArrowUp: 1,
      ArrowLeft: -1,
      ArrowDown: -1,
      PageUp: 10,
      PageDown: -10,
      Home: -last(),
      End: last(),
    }
    const step = steps[event.key]
    if (step === undefined || event.ctrlKey || event.altKey || event.metaKey) return
    event.preventDefault()
    // from the point that is shown: the chart may have fewer than when it was chosen
    setAt(Math.min(Math.max(place() + step, 0), last()))
  }

  function onPointer(event: PointerEvent & { currentTarget: HTMLElement }): void {
    const x = event.clientX - event.currentTarget.getBoundingClientRect().left
    const { left, right } = drawn()
    setAt(Math.min(Math.max(Math.round(((x - left) / (right - left)) * last()), 0), last()))
  }

  /** Where there is no answer, and why; scenarios that lack it alike are told together. */
  const gaps = createMemo(() => {
    const { input, at: values, panels } = props.model
    const told = new Map<
      string,
      { readonly names: string[]; readonly label: string; readonly span: string; readonly why: string }
    >()
    for (const { axis, curves } of panels)
      for (const { name, gaps: found } of curves)
        for (const { from, to, why } of found) {
          const quantity = book.catalog().quantities.get(axis.quantity)
          const [low, high] = [values[from] ?? 0, values[to] ?? 0]
          const span =
            from === to
              ? input.text(low)
              : say('page.study.interval', { low: input.figure(low), high: input.text(high) })
          const reason = quantity ? problemText(why, quantity) : ''
          const key = [axis.quantity, span, reason].join(' | ')
          const known = told.get(key)
          if (known) known.names.push(name)
          else told.set(key, { names: [name], label: axis.label, span, why: reason })
        }
    return [...told.values()].map(({ names, label, span, why }) => say('page.study.gap', { label, names, span, why }))
  })
  const rings = () => props.model.panels.some(({ curves }) => curves.some(({ now }) => now !== null))

  return (
    <figure class="chart">
      <div class="plot" ref={box}>
        <DrawingView drawing={drawn().drawing} label={props.model.title}>
          <g class="reader" classList={{ on: at() !== null }}>
            <line x1={drawn().xs[place()]} x2={drawn().xs[place()]} y1={drawn().top} y2={drawn().bottom} />
            <For each={props.model.panels}>
              {(panel, p) => (
                <For each={panel.curves}>
                  {(curve) => {
                    const y = () => {
                      const value = curve.values[place()] ?? null
                      return value === null ? undefined : drawn().y[p()]?.(value)
                    }
                    return (
                      <Show when={y() !== undefined}>
                        <circle
                          class={`fill ${penOf(curve.pen).colour}`}
                          cx={drawn().xs[place()]}
                          cy={y()}
                          r={RADIUS}
                        />
                      </Show>
                    )
                  }}
                </For>
              )}
            </For>
          </g>
        </DrawingView>
        <div
          class="hand"
          role="slider"
          tabindex={0}
          aria-label={say('page.study.reader', { name: props.model.title })}
          aria-description={say('page.study.read_keys')}
          aria-valuemin={0}
          aria-valuemax={last()}
          aria-valuenow={place()}
          aria-valuetext={lines().join('. ')}
          onKeyDown={onKeyDown}
          onFocus={() => setAt((now) => now ?? middle())}
          onBlur={() => setAt(null)}
          onPointerMove={onPointer}
          onPointerDown={onPointer}
          onPointerLeave={(event) => {
            if (document.activeElement !== event.currentTarget) setAt(null)
          }}
        />
      </div>
      <div class="readout">
        <For each={lines()}>{(text) => <p>{text}</p>}</For>
      </div>
      <Show when={rings()}>
        <p class="quiet">{say('page.study.rings')}</p>
      </Show>
      <Show when={gaps().length > 0}>
        <h3>{say('page.study.gaps')}</h3>
        <ul class="gaps">
          <For each={gaps()}>{(gap) => <li>{gap}</li>}</For>
        </ul>
      </Show>
      <SavePicture drawing={() => drawSweep(props.model, 860).drawing} />
      <SweepTable model={props.model} />
    </figure>
  )
}
