import type { SheetCell } from './sheet'
import { element, escaped } from './xml'

/** Names of the styles that cells use; `odsStyles` makes them. */
export const STYLE = {
  title: 'title',
  head: 'head',
  headFigure: 'headfigure',
  group: 'group',
  quiet: 'quiet',
  label: 'label',
  wrap: 'wrap',
} as const

/** The style of a figure with so many decimals; an assumption is set apart by weight, slant and a frame. */
export function figureStyle(decimals: number, assumed: boolean): string {
  return `${assumed ? 'assumed' : 'figure'}${Math.min(Math.max(decimals, 0), MOST_DECIMALS)}`
}

export const MOST_DECIMALS = 9

export function textCell(text: string, style?: string): string {
  if (text === '') return element('table:table-cell', { 'table:style-name': style })
  return element('table:table-cell', { 'office:value-type': 'string', 'table:style-name': style }, ...paragraphs(text))
}

export function emptyCells(count: number): string {
  return count === 0
    ? ''
    : element('table:table-cell', { 'table:number-columns-repeated': count === 1 ? undefined : count })
}

/** A value with its full digits, shown as the page shows it. What is missing is empty, never zero. */
export function valueCell({ value, shown, decimals, assumed, note }: SheetCell): string {
  const remark = note === '' ? [] : [element('office:annotation', {}, ...paragraphs(note))]
  if (value === null) return element('table:table-cell', {}, ...remark)
  const style = figureStyle(decimals, assumed)
  const typed =
    typeof value === 'number'
      ? { 'office:value-type': 'float', 'office:value': value }
      : typeof value === 'boolean'
        ? { 'office:value-type': 'boolean', 'office:boolean-value': String(value) }
        : { 'office:value-type': 'string' }
  return element('table:table-cell', { ...typed, 'table:style-name': style }, ...remark, ...paragraphs(shown))
}

/** A line each. Of several spaces in a row a reader of the format keeps one, so the others are counted (ODF 1.3 part 3, 6.1.2). */
function paragraphs(text: string): readonly string[] {
  return text.split(/\r\n|\r|\n/).map((line) =>
    element(
      'text:p',
      {},
      line
        .split(/(^ +| {2,}| +$|\t)/)
        .map((part) => {
          if (part === '\t') return element('text:tab')
          return / {2,}|^ +$/.test(part) ? element('text:s', { 'text:c': part.length }) : escaped(part)
        })
        .join(''),
    ),
  )
}
