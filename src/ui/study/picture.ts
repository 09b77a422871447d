import type { Colour } from './drawing'

/** How a picture without its page looks: the colours of light paper as `look/tokens.css` has them, the typefaces with others to fall back on. */
export const LIGHT: Readonly<Record<Colour | 'paper', string>> = {
  ink: '#1d2024',
  pen: '#1d479b',
  grey: '#53575d',
  rule: '#dedacf',
  axis: '#b5b0a2',
  band: '#d9e4db',
  warm: '#a3351a',
  paper: '#fdfcf8',
}
export const SANS = "'IBM Plex Sans', 'Segoe UI', 'Helvetica Neue', Arial, sans-serif"
export const SERIF = "Literata, 'Iowan Old Style', 'Palatino Linotype', Georgia, serif"

/** Room around the drawing, and for the title over it, in pixels. */
export const ROOM = 16
export const HEAD = 22
export const TITLE_SIZE = 15
