import { createSignal, Show, untrack } from 'solid-js'
import { say, sentence } from '../../words/say'
import { planStateOf } from '../carry/planStates'
import { useBook } from '../shell/book'
import { Menu } from '../shell/Menu'
import { headName } from '../shell/selection'
import { dragged, dragScenario } from './dragScenario'
import { useDrawn } from './drawn'
import { HeadEditor } from './HeadEditor'
import { sayRange } from './sayRange'
import { scenarioMenu } from './scenarioMenu'
import { selectWhole } from './selectWhole'
import { WidthHandle, widthName } from './WidthHandle'

/** A scenario's name and note; a press opens what can be done with it. */
export function ScenarioHead(props: { worksheet: string; scenario: string }) {
  const book = useBook()
  const drawn = useDrawn()
  const column = () => drawn.place(props.scenario)
  const [open, setOpen] = createSignal(false)
  const [writing, setWriting] = createSignal<'name' | 'note' | null>(null)
  let wasDragged = false
  let button: HTMLButtonElement | undefined
  const scenario = () => book.scenario(props.scenario)
  const sample = () => book.sample(scenario()?.sample ?? '')
  /** its note; else the sample that it is tied to, unless it bears the sample's name anyway */
  const about = () => {
    const state = planStateOf(book, props.scenario)
    if (state) return state === 'due' ? say('page.plan_due') : say('page.plan_stands', { why: sentence(state) })
    const [now, tied] = [scenario(), sample()]
    if (now?.note) return now.note
    const parts = tied ? [tied.name === now?.name ? '' : tied.name, tied.date.slice(0, 10)] : []
    return parts.filter((part) => part !== '').join(', ') || (column() === 0 ? say('page.baseline') : '')
  }
  // One heading is a stop of the Tab key: that of the selected cell.
  const isStop = () => book.selection.isIn(headName(props.worksheet, props.scenario))

  function widen(): void {
    document.getElementById(widthName(props.worksheet, props.scenario))?.focus()
  }

  /** All of it in this worksheet; with Shift, all scenarios from the selected one to it. */
  function selectScenario(reaching: boolean): void {
    const { selection } = book
    const row = book.lines().findIndex(({ worksheet }) => worksheet === props.worksheet)
    if (reaching) selection.extendTo({ row, column: column() })
    else selection.selectAt({ row, column: column() })
    selectWhole(book, 'scenario')
    sayRange(book)
  }

  const width = () => {
    const chosen = drawn.width(props.scenario)
    return chosen === undefined ? undefined : `width:${chosen}px`
  }
  /** the side on which a scenario that is being dragged would stand */
  const drop = () => {
    const now = dragged()
    if (!now || now.to !== column() || now.scenario === props.scenario) return null
    return drawn.place(now.scenario) < now.to ? 'after' : 'before'
  }

  return (
    <div
      role="columnheader"
      class="scenario"
      classList={{
        moved: dragged()?.scenario === props.scenario,
        'drop-before': drop() === 'before',
        'drop-after': drop() === 'after',
      }}
      style={width()}
      data-scenario={props.scenario}
      aria-colindex={column() + 4}
    >
      <Show
        when={writing()}
        fallback={
          <button
            ref={button}
            type="button"
            id={headName(props.worksheet, props.scenario)}
            tabindex={isStop() ? 0 : -1}
            aria-haspopup="menu"
            aria-expanded={open()}
            onPointerDown={(event) => {
              wasDragged = false
              dragScenario(book, props.scenario, event, () => {
                wasDragged = true
              })
            }}
            onClick={(event) => {
              if (wasDragged) return
              // A press selects the scenario too; a key only opens its menu.
              if (event.detail > 0) selectScenario(event.shiftKey)
              if (!event.shiftKey) setOpen(!open())
            }}
            onKeyDown={(event) => {
              if (event.key !== 'ArrowDown') return
              event.preventDefault()
              event.stopPropagation()
              setOpen(true)
            }}
          >
            <span class="name">{scenario()?.name}</span>
            <span class="note">{about()}</span>
          </button>
        }
      >
        {(part) => (
          <HeadEditor
            scenario={props.scenario}
            part={part()}
            onDone={() => {
              setWriting(null)
              document.getElementById(headName(props.worksheet, props.scenario))?.focus()
            }}
          />
        )}
      </Show>
      <WidthHandle worksheet={props.worksheet} scenario={props.scenario} />
      <Show when={open() && button}>
        {(anchor) => {
          // As it was opened: items made anew by what happens meanwhile would take the focus with them.
          const items = untrack(() => scenarioMenu(book, props.scenario, { write: setWriting, widen }))
          return (
            <Menu
              anchor={anchor()}
              label={say('page.scenario_menu', { name: scenario()?.name ?? '' })}
              items={items}
              onClose={() => setOpen(false)}
            />
          )
        }}
      </Show>
    </div>
  )
}
