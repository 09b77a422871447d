import type { ChartScale } from './chartScale'
import type { PointLook } from './drawPoints'
import type { Points } from './points'
import type { Slices } from './slices'

/** How much of a pixel one point inks, of 255. */
const INK = 70

/**
 * Many points as a cloud, pixel by pixel: drawing shapes would hold the page up. Points out of their band are crosses of
 * five pixels. False when it was given up on the way.
 */
export async function drawCloud(
  context: CanvasRenderingContext2D,
  points: Points,
  x: ChartScale,
  y: ChartScale,
  sharp: number,
  { isOut, isChosen, pens }: PointLook,
  slices: Slices,
  givenUp: () => boolean,
): Promise<boolean> {
  const { width, height } = context.canvas
  const image = context.createImageData(width, height)
  const colours = { ink: rgb(pens.ink), warm: rgb(pens.warm), pen: rgb(pens.pen) }
  const put = (px: number, py: number, colour: readonly number[]) => {
    const at = (py * width + px) * 4
    for (let i = 0; i < 3; i++) image.data[at + i] = colour[i] ?? 0
    image.data[at + 3] = Math.min(255, (image.data[at + 3] ?? 0) + INK)
  }
  for (let at = 0; at < points.rows.length; at++) {
    const px = Math.round(x.at(points.x[at] ?? 0) * sharp)
    const py = Math.round(y.at(points.y[at] ?? 0) * sharp)
    const out = isOut(at)
    const colour = isChosen(at) ? colours.pen : out ? colours.warm : colours.ink
    put(px, py, colour)
    if (out) for (const [dx, dy] of ARMS) put(px + dx, py + dy, colour)
    if (at % 1_024 !== 0 || !slices.due()) continue
    await slices.pause()
    if (givenUp()) return false
  }
  context.putImageData(image, 0, 0)
  return true
}

const ARMS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const

/** `rgb(29, 32, 36)`, as a computed style has it. */
function rgb(colour: string): readonly number[] {
  return (colour.match(/[\d.]+/g) ?? []).map(Number)
}
