import { say } from '../../words/say'
import { NARROWEST, WIDEST } from '../shell/arrangement'
import { useBook } from '../shell/book'
import { headName } from '../shell/selection'
import { useDrawn } from './drawn'

/** Pixels by which a key widens or narrows. */
const STEP = 8

/** The id of the handle that a scenario's column is widened by. */
export function widthName(worksheet: string, scenario: string): string {
  return `width-${worksheet}-${scenario}`
}

/**
 * The edge of a scenario's column, after the WAI-ARIA window splitter: it is drawn, or moved by the arrow keys; a double
 * press brings back the usual width.
 */
export function WidthHandle(props: { worksheet: string; scenario: string }) {
  const book = useBook()
  const drawn = useDrawn()
  const width = () => {
    const usual = props.scenario === book.baseline() ? drawn.widths().base : drawn.widths().cell
    return Math.round(drawn.width(props.scenario) ?? usual)
  }
  const set = (next: number | null) => book.arrangement.setWidth(props.scenario, next)
  const back = () => document.getElementById(headName(props.worksheet, props.scenario))?.focus()

  function onPointerDown(event: PointerEvent & { currentTarget: HTMLElement }): void {
    event.preventDefault()
    const handle = event.currentTarget
    const [start, from] = [width(), event.clientX]
    handle.setPointerCapture(event.pointerId)
    const onMove = ({ clientX }: PointerEvent) => set(start + clientX - from)
    handle.addEventListener('pointermove', onMove)
    const end = () => handle.removeEventListener('pointermove', onMove)
    handle.addEventListener('pointerup', end, { once: true })
    handle.addEventListener('pointercancel', end, { once: true })
  }

  function onKeyDown(event: KeyboardEvent): void {
    event.stopPropagation()
    if (event.key === 'ArrowRight') set(width() + STEP)
    else if (event.key === 'ArrowLeft') set(width() - STEP)
    else if (event.key === 'Home') set(NARROWEST)
    else if (event.key === 'End') set(WIDEST)
    else if (event.key === 'Delete') set(null)
    else if (event.key === 'Enter' || event.key === 'Escape') back()
    else return
    event.preventDefault()
  }

  return (
    <div
      id={widthName(props.worksheet, props.scenario)}
      class="width-handle"
      role="separator"
      tabindex={-1}
      aria-orientation="vertical"
      aria-label={say('page.grid.width_of', { name: book.scenario(props.scenario)?.name ?? '' })}
      aria-valuenow={width()}
      aria-valuemin={NARROWEST}
      aria-valuemax={WIDEST}
      onPointerDown={onPointerDown}
      onDblClick={() => set(null)}
      onKeyDown={onKeyDown}
    />
  )
}
