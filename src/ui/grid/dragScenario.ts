import { type Accessor, createSignal } from 'solid-js'
import { placeScenario } from '../../notebook/commands'
import { isProblem } from '../../words/problem'
import { sentence } from '../../words/say'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'

/** Pixels that a press may wander and still be a press. */
const SLACK = 6

/** A scenario that is being moved, and the place among all that it would take. */
export interface Dragged {
  readonly scenario: string
  readonly to: number
}

const [now, setNow] = createSignal<Dragged | null>(null)

export const dragged: Accessor<Dragged | null> = now

/** Follows a press on a scenario's heading; where it is let go over another, the scenario takes that place. */
export function dragScenario(book: Book, scenario: string, press: PointerEvent, onDragged: () => void): void {
  const from = book.scenarios().indexOf(scenario)
  if (press.button !== 0 || press.pointerType === 'touch' || from <= 0 || !book.writable()) return
  const onMove = ({ clientX, clientY }: PointerEvent) => {
    if (!now() && Math.abs(clientX - press.clientX) < SLACK) return
    const over = document.elementFromPoint(clientX, clientY)?.closest<HTMLElement>('.head .scenario')
    const to = book.scenarios().indexOf(over?.dataset.scenario ?? '')
    setNow({ scenario, to: to < 1 ? from : to })
  }
  const end = ({ type }: Event) => {
    removeEventListener('pointermove', onMove)
    removeEventListener('pointerup', end)
    removeEventListener('pointercancel', end)
    const to = now()?.to
    if (to === undefined) return
    setNow(null)
    onDragged()
    if (type !== 'pointerup' || to === from) return
    const edit = placeScenario(book.notebook(), scenario, to)
    const trouble = isProblem(edit) ? edit : book.dispatch(edit)
    if (trouble) announce(sentence(trouble))
  }
  addEventListener('pointermove', onMove)
  addEventListener('pointerup', end)
  addEventListener('pointercancel', end)
}
