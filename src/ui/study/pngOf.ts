import type { Drawing } from './drawing'
import { svgText } from './svgText'

/** Pixels of the picture for each of the drawing: sharp on paper and on fine screens. */
const SHARP = 2

/** A drawing as a PNG; null when the browser cannot make one. */
export async function pngOf(drawing: Drawing): Promise<Blob | null> {
  const address = URL.createObjectURL(new Blob([svgText(drawing)], { type: 'image/svg+xml' }))
  try {
    const image = new Image()
    image.src = address
    await image.decode()
    const canvas = document.createElement('canvas')
    canvas.width = image.naturalWidth * SHARP
    canvas.height = image.naturalHeight * SHARP
    const context = canvas.getContext('2d')
    if (!context) return null
    context.drawImage(image, 0, 0, canvas.width, canvas.height)
    return await new Promise((done) => canvas.toBlob(done, 'image/png'))
  } catch {
    return null
  } finally {
    URL.revokeObjectURL(address)
  }
}
