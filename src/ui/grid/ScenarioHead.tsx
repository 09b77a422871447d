import { createSignal, Show } from 'solid-js'
import { say } from '../../words/say'
import { useBook } from '../shell/book'
import { Menu } from '../shell/Menu'
import { headName } from '../shell/selection'
import { HeadEditor } from './HeadEditor'
import { scenarioMenu } from './scenarioMenu'

/** A scenario's name and note; a press opens what can be done with it. */
export function ScenarioHead(props: { worksheet: string; scenario: string; column: number }) {
  const book = useBook()
  const [open, setOpen] = createSignal(false)
  const [writing, setWriting] = createSignal<'name' | 'note' | null>(null)
  let button: HTMLButtonElement | undefined
  const scenario = () => book.scenario(props.scenario)
  const sample = () => book.sample(scenario()?.sample ?? '')
  /** its note; else the sample that it is tied to, unless it bears the sample's name anyway */
  const about = () => {
    const [now, tied] = [scenario(), sample()]
    if (now?.note) return now.note
    const parts = tied ? [tied.name === now?.name ? '' : tied.name, tied.date.slice(0, 10)] : []
    return parts.filter((part) => part !== '').join(', ') || (props.column === 0 ? say('page.baseline') : '')
  }
  // One heading is a stop of the Tab key: that of the selected cell.
  const isStop = () => book.selection.isIn(headName(props.worksheet, props.scenario))

  return (
    <div role="columnheader" class="scenario" aria-colindex={props.column + 4}>
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
            onClick={() => setOpen(!open())}
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
      <Show when={open() && button}>
        {(anchor) => (
          <Menu
            anchor={anchor()}
            label={say('page.scenario_menu', { name: scenario()?.name ?? '' })}
            items={scenarioMenu(book, props.scenario, setWriting)}
            onClose={() => setOpen(false)}
          />
        )}
      </Show>
    </div>
  )
}
