import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { fromFile } from '../../src/notebook/file'
import type { Notebook } from '../../src/notebook/notebook'
import { type Entered, isUnread } from '../../src/ui/study/entered'
import { readFigure } from '../../src/ui/study/readFigure'
import { isRefusal, solveOrder } from '../../src/ui/study/solveOrder'
import { bookFor } from './bookFor'

const book = bookFor(fromFile(readFileSync('examples/little-heron.json', 'utf8'), 'little-heron.json') as Notebook)
const fields = { scenario: book.baseline(), output: 'lsi', input: 'ph', wanted: 0.2, from: 6.8, to: 8.4 }
const codes = (order: ReturnType<typeof solveOrder>) => (isRefusal(order) ? order.map(({ code }) => code) : order)

describe('an order to solve back', () => {
  test('has what stands in the fields', () => {
    expect(solveOrder(book, fields)).toMatchObject({ wanted: 0.2, from: 6.8, to: 8.4, input: 'ph', output: 'lsi' })
  })

  test.each(['wanted', 'from', 'to'] as const)('is refused where %s is empty or cannot be read', (field) => {
    const unread = readFigure(book, field === 'wanted' ? 'lsi' : 'ph', 'about 7')
    expect(codes(solveOrder(book, { ...fields, [field]: unread }))).toEqual(['unreadable_number'])
    const none = field === 'wanted' ? 'study_needs_wanted' : 'study_needs_span'
    expect(codes(solveOrder(book, { ...fields, [field]: null }))).toEqual([none])
  })

  test('is refused for a span that ends before it begins, and for an input that the output does not read', () => {
    expect(codes(solveOrder(book, { ...fields, to: 6.8 }))).toEqual(['span_empty'])
    expect(codes(solveOrder(book, { ...fields, input: 'turbidity', from: 0, to: 1 }))).toEqual(['study_not_read'])
  })
})

describe('a field for a figure', () => {
  test('keeps a text that it cannot read, with the reason', () => {
    for (const text of ['0.2.3', '-', '<7']) {
      const read: Entered = readFigure(book, 'ph', text)
      if (!isUnread(read)) throw new Error(`${text} was read`)
      expect(read.text).toBe(text)
      expect(read.why.path).toEqual(['pH'])
    }
  })

  test('reads a unit behind the figure, and nothing as nothing', () => {
    expect(readFigure(book, 'temperature', '59 °F')).toBeCloseTo(15, 9)
    expect(readFigure(book, 'temperature', ' ')).toBe(null)
  })
})
