import { createSignal, Show } from 'solid-js'
import { say } from '../../words/say'
import { useBook } from '../shell/book'
import { Menu } from '../shell/Menu'
import { HeadEditor } from './HeadEditor'
import { scenarioMenu } from './scenarioMenu'

/** The id of a scenario's heading in one worksheet. */
export function headName(worksheet: string, scenario: string): string {
  return `head-${worksheet}-${scenario}`
}

/** A scenario's name and note; a press opens what can be done with it. */
export function ScenarioHead(props: { worksheet: string; scenario: string; column: number }) {
  const book = useBook()
  const [open, setOpen] = createSignal(false)
  const [writing, setWriting] = createSignal<'name' | 'note' | null>(null)
  let button: HTMLButtonElement | undefined
  const scenario = () => book.notebook().scenarios[props.scenario]
  const sample = () => book.notebook().samples[scenario()?.sample ?? '']
  const about = () => scenario()?.note || sample()?.name || (props.column === 0 ? say('page.baseline') : '')
  // One heading is a stop of the Tab key: that of the selected cell.
  const isStop = () => {
    const cell = book.selection.cell()
    return cell?.scenario === props.scenario && cell.row.worksheet === props.worksheet
  }

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
              button?.focus()
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
