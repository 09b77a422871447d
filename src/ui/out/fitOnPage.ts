/**
 * Millimetres of A4 and of US letter alike, the shorter of each side, within margins of 12 mm; less 4 % for hairlines and
 * lines of text, which are not drawn thinner or closer than the printer can.
 */
const SHORT = 178
const LONG = 245
const PIXELS = 96 / 25.4

/**
 * How far something of this size, in CSS pixels, has to be shrunk to stand on one page, and whether the page then lies on
 * its side. Nothing is enlarged.
 */
export function fitOnPage(width: number, height: number): { readonly scale: number; readonly wide: boolean } {
  const scaleOn = (across: number, down: number) => Math.min(1, (across * PIXELS) / width, (down * PIXELS) / height)
  const [upright, lying] = [scaleOn(SHORT, LONG), scaleOn(LONG, SHORT)]
  return lying > upright ? { scale: lying, wide: true } : { scale: upright, wide: false }
}
