import { locale } from '../../words/locale'

/** A figure as it stands in a field, to be read back as it is: no grouping, the reader's decimal mark, so many significant figures. */
export function figureIn(value: number, figures: number): string {
  return String(Number(value.toPrecision(figures))).replace('.', locale().decimal)
}
