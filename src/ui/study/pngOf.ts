import { type Drawing, type Mark, RADIUS, TEXT_SIZE } from './drawing'
import { HEAD, LIGHT, ROOM, SANS, SERIF, TITLE_SIZE } from './picture'

/** Pixels of the picture for each of the drawing: sharp on paper and on fine screens. */
const SHARP = 2

/** A drawing as a PNG on light paper, in the page's own typefaces; null when the browser cannot make one. */
export async function pngOf({ width, height, title, marks }: Drawing): Promise<Blob | null> {
  await document.fonts.ready
  const canvas = document.createElement('canvas')
  canvas.width = Math.ceil((width + 2 * ROOM) * SHARP)
  canvas.height = Math.ceil((height + 2 * ROOM + HEAD) * SHARP)
  const context = canvas.getContext('2d')
  if (!context) return null
  context.scale(SHARP, SHARP)
  context.fillStyle = LIGHT.paper
  context.fillRect(0, 0, canvas.width, canvas.height)
  context.fillStyle = LIGHT.ink
  context.font = `${TITLE_SIZE}px ${SERIF}`
  context.fillText(title, ROOM, ROOM + 10)
  context.translate(ROOM, ROOM + HEAD)
  for (const mark of marks) paint(context, mark)
  return new Promise((done) => canvas.toBlob(done, 'image/png'))
}

function paint(context: CanvasRenderingContext2D, mark: Mark): void {
  const colour = LIGHT[mark.colour]
  context.fillStyle = colour
  context.strokeStyle = colour
  context.lineWidth = 1
  context.setLineDash([])
  switch (mark.kind) {
    case 'line':
      context.stroke(new Path2D(`M${mark.x1} ${mark.y1}L${mark.x2} ${mark.y2}`))
      return
    case 'path':
      context.lineWidth = 1.5
      context.setLineDash(mark.dash === '' ? [] : mark.dash.split(' ').map(Number))
      context.stroke(new Path2D(mark.d))
      return
    case 'block':
      context.fillRect(mark.x, mark.y, mark.width, mark.height)
      return
    case 'dot':
    case 'ring': {
      const circle = new Path2D()
      circle.arc(mark.x, mark.y, mark.kind === 'dot' ? RADIUS : RADIUS + 0.5, 0, 2 * Math.PI)
      context.lineWidth = 1.5
      if (mark.kind === 'ring') context.fillStyle = LIGHT.paper
      context.fill(circle)
      if (mark.kind === 'ring') context.stroke(circle)
      return
    }
    case 'text':
      context.font = `${TEXT_SIZE}px ${mark.serif ? SERIF : SANS}`
      context.textAlign = mark.anchor === 'middle' ? 'center' : mark.anchor
      context.fillText(mark.text, mark.x, mark.y)
  }
}
