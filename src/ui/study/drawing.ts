/** A colour of the look, by name: on the page it follows the paper, in a picture it is that of light paper. */
export type Colour = 'ink' | 'pen' | 'grey' | 'rule' | 'axis' | 'band' | 'warm'

export type Mark =
  | {
      readonly kind: 'line'
      readonly colour: Colour
      readonly x1: number
      readonly y1: number
      readonly x2: number
      readonly y2: number
    }
  | { readonly kind: 'path'; readonly colour: Colour; readonly d: string; readonly dash: string }
  | {
      readonly kind: 'block'
      readonly colour: Colour
      readonly x: number
      readonly y: number
      readonly width: number
      readonly height: number
    }
  /** a ring is hollow */
  | { readonly kind: 'dot' | 'ring'; readonly colour: Colour; readonly x: number; readonly y: number }
  | {
      readonly kind: 'text'
      readonly colour: Colour
      readonly x: number
      readonly y: number
      readonly text: string
      readonly anchor: 'start' | 'middle' | 'end'
      /** names of quantities stand in the book's serif */
      readonly serif?: true
    }

/** A chart as plain marks, in pixels: the page shows them, and a picture file is written from the very same ones. */
export interface Drawing {
  readonly width: number
  readonly height: number
  /** what a picture without its page has to say */
  readonly title: string
  readonly marks: readonly Mark[]
}

export const RADIUS = 3.5
export const TEXT_SIZE = 12

/** How wide a text is, near enough to leave room for it: the typefaces differ from machine to machine. */
export function widthOf(text: string): number {
  return text.length * 6.6
}

/** The text, cut to what fits. */
export function fitted(text: string, width: number): string {
  const most = Math.max(3, Math.floor(width / 6.6))
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`
}
