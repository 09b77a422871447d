/** What of the grid a reader sees of its cells, in the window's pixels. */
export interface Sight {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

export interface Point {
  readonly x: number
  readonly y: number
}

/** CSS pixels a second for each pixel past the edge, and the most: faster, nobody sees where it is. */
const GAIN = 8
const FASTEST = 2400

/** How fast to scroll for a pointer past the edges, in CSS pixels a second, and which way; 0 and 0 inside. */
export function paceAt(point: Point, sight: Sight): Point {
  return { x: pace(past(point.x, sight.left, sight.right)), y: pace(past(point.y, sight.top, sight.bottom)) }
}

/** The place in sight that is nearest to a point. */
export function nearestIn({ x, y }: Point, { left, top, right, bottom }: Sight): Point {
  return { x: Math.max(left, Math.min(x, right)), y: Math.max(top, Math.min(y, bottom)) }
}

function past(at: number, from: number, to: number): number {
  return at < from ? at - from : Math.max(0, at - to)
}

function pace(distance: number): number {
  return Math.max(-FASTEST, Math.min(distance * GAIN, FASTEST))
}
