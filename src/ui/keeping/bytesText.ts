import { numberText } from '../../words/written'

const UNITS = ['byte', 'kilobyte', 'megabyte', 'gigabyte', 'terabyte'] as const

/** A size as the reader writes it, in the largest unit of which there is at least one. */
export function bytesText(bytes: number): string {
  const step = Math.min(Math.floor(Math.log10(Math.max(bytes, 1)) / 3), UNITS.length - 1)
  return numberText(bytes / 1000 ** step, { style: 'unit', unit: UNITS[step] ?? 'byte', maximumSignificantDigits: 3 })
}
