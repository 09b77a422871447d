import type { ChartScale } from './chartScale'
import type { Points } from './points'

export interface PointLook {
  readonly isOut: (at: number) => boolean
  readonly isChosen: (at: number) => boolean
  readonly pens: { readonly ink: string; readonly warm: string; readonly pen: string }
}

/** Up to this many points are drawn one by one; of more, what counts is where they lie close. */
export const FEW = 2_000

/** A point out of its band is a small cross, a chosen one has a ring: not a colour alone. */
export function drawPoints(
  context: CanvasRenderingContext2D,
  points: Points,
  x: ChartScale,
  y: ChartScale,
  { isOut, isChosen, pens }: PointLook,
): void {
  for (let at = 0; at < points.rows.length; at++) {
    const [px, py] = [x.at(points.x[at] ?? 0), y.at(points.y[at] ?? 0)]
    context.globalAlpha = 0.75
    context.beginPath()
    if (isOut(at)) {
      context.fillStyle = pens.warm
      context.rect(px - 4, py - 0.6, 8, 1.2)
      context.rect(px - 0.6, py - 4, 1.2, 8)
    } else {
      context.fillStyle = pens.ink
      context.arc(px, py, 2.5, 0, 2 * Math.PI)
    }
    context.fill()
    if (!isChosen(at)) continue
    context.globalAlpha = 1
    context.strokeStyle = pens.pen
    context.beginPath()
    context.arc(px, py, 5.5, 0, 2 * Math.PI)
    context.stroke()
  }
}
