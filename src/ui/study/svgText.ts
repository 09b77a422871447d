import { type Drawing, type Mark, RADIUS, TEXT_SIZE } from './drawing'
import { HEAD, LIGHT, ROOM, SANS, SERIF, TITLE_SIZE } from './picture'

/** A drawing as a file of its own: light paper, its title, nothing fetched from anywhere, no styles and no scripts. */
export function svgText({ width, height, title, marks }: Drawing): string {
  const [wide, high] = [width + 2 * ROOM, height + 2 * ROOM + HEAD]
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}" height="${high}" viewBox="0 0 ${wide} ${high}">`,
    `<title>${escaped(title)}</title>`,
    `<rect width="${wide}" height="${high}" fill="${LIGHT.paper}"/>`,
    `<text x="${ROOM}" y="${ROOM + 10}" font-family="${SERIF}" font-size="${TITLE_SIZE}" fill="${LIGHT.ink}">${escaped(title)}</text>`,
    `<g transform="translate(${ROOM} ${ROOM + HEAD})" font-family="${SANS}" font-size="${TEXT_SIZE}">`,
    ...marks.map(element),
    '</g>',
    '</svg>',
    '',
  ].join('\n')
}

function element(mark: Mark): string {
  const colour = LIGHT[mark.colour]
  switch (mark.kind) {
    case 'line':
      return `<line x1="${n(mark.x1)}" y1="${n(mark.y1)}" x2="${n(mark.x2)}" y2="${n(mark.y2)}" stroke="${colour}"/>`
    case 'path': {
      const dash = mark.dash === '' ? '' : ` stroke-dasharray="${mark.dash}"`
      return `<path d="${mark.d}" fill="none" stroke="${colour}" stroke-width="1.5"${dash}/>`
    }
    case 'block':
      return `<rect x="${n(mark.x)}" y="${n(mark.y)}" width="${n(mark.width)}" height="${n(mark.height)}" fill="${colour}"/>`
    case 'dot':
      return `<circle cx="${n(mark.x)}" cy="${n(mark.y)}" r="${RADIUS}" fill="${colour}"/>`
    case 'ring':
      return `<circle cx="${n(mark.x)}" cy="${n(mark.y)}" r="${RADIUS + 0.5}" fill="${LIGHT.paper}" stroke="${colour}" stroke-width="1.5"/>`
    case 'text': {
      const family = mark.serif ? ` font-family="${SERIF}"` : ''
      return `<text x="${n(mark.x)}" y="${n(mark.y)}" text-anchor="${mark.anchor}" fill="${colour}"${family}>${escaped(mark.text)}</text>`
    }
  }
}

/** Hundredths of a pixel are finer than any printer. */
function n(value: number): string {
  return String(Math.round(value * 100) / 100)
}

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`).replace(/\p{Cc}/gu, ' ')
}
