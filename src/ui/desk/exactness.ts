import type { Exactness } from '../../notebook/believe'
import { methodsOf, type TestMethod } from '../../study/methods'
import { formatDifference } from '../../units/format'
import { hasWords, say } from '../../words/say'
import { decimalsOf } from '../decimalsOf'
import type { Book } from '../shell/book'
import { unitWords } from '../unitWords'

/** How exact the tests of a quantity are. */
export function exactnessOf(quantity: string): Exactness {
  return (method, value) => {
    const test = methodsOf(quantity).find((one) => one.method === method)
    return test && halfOf(test, value)
  }
}

function halfOf({ half, share }: TestMethod, value: number): number {
  return Math.max(half, share * Math.abs(value))
}

/** A test by its name; one that a laboratory named itself as it did. */
export function methodWords(method: string): string {
  const key = `method.${method}`
  return hasWords(key) ? say(key) : method
}

/** `within 0.2 ppm`: what a test tells, in the unit of the row. Tracked. */
export function exactWords(book: Book, quantity: string, method: string | undefined, value: number): string {
  const half = exactnessOf(quantity)(method, value)
  const row = book.catalog().quantities.get(quantity)?.row
  if (half === undefined || !row) return ''
  const unit = book.unit(quantity)
  const figure = formatDifference(half, row.unit, unit, Math.max(decimalsOf(row), half < 1 ? 1 : 0)).replace(/^\+/, '')
  return say('page.desk.within', { half: `${figure} ${unitWords(unit)}`.trim() })
}
