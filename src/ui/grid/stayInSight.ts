import { afterDrawing } from '../shell/afterDrawing'

/** Drawings without a change after which all is taken to be drawn; and the most that are waited for. */
const STILL = 5
const MOST = 90

/** Counts up with each place that is to stay in sight, and whenever the reader scrolls: what was begun before ends. */
let turn = 0

/**
 * Goes on bringing a place into sight while what stands above it is drawn, and grows: scrolled to once, it would be pushed out again.
 * @param reach brings it into sight and says where on the page it stands; null: it is not what the reader is at any more
 */
export function stayInSight(reach: () => number | null, after: (run: () => void) => void = afterDrawing): void {
  turn += 1
  const mine = turn
  let [still, drawings] = [0, 0]
  let before: number | null = null
  const next = () => {
    const at = mine === turn ? reach() : null
    if (at === null) return
    still = at === before ? still + 1 : 0
    before = at
    drawings += 1
    if (still < STILL && drawings < MOST) after(next)
  }
  after(next)
}

/** The reader scrolls to somewhere else: nothing may pull the page back. */
export function leaveSight(): void {
  turn += 1
}
