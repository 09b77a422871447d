import { describe, expect, test } from 'vitest'
import { type DateOrder, ordersOf, readDate, withTime } from '../../src/intake/dates'

const iso = (text: string, order: DateOrder | null = null) => {
  const read = readDate(text, order)
  return read.kind === 'date' ? read.iso : read.kind === 'missing' ? '' : read.why
}

describe('readDate', () => {
  test.each<[string, DateOrder | null, string]>([
    ['2026-07-14', null, '2026-07-14'],
    ['2026-7-4', null, '2026-07-04'],
    ['2026-07-14 09:30', null, '2026-07-14T09:30'],
    ['2026-07-14T09:30:15Z', null, '2026-07-14T09:30:15Z'],
    ['2026-07-14T09:30+02:00', null, '2026-07-14T09:30+02:00'],
    ['2026/07/14', null, '2026-07-14'],
    ['20260714', null, '2026-07-14'],
    ['14.07.2026', null, '2026-07-14'],
    ['4.7.26', null, '2026-07-04'],
    ['14.07.2026 09:30', null, '2026-07-14T09:30'],
    ['14.07.2026, 9:30 Uhr', null, '2026-07-14T09:30'],
    ['07/14/2026', null, '2026-07-14'],
    ['14/07/2026', null, '2026-07-14'],
    ['03/07/2026', null, 'ambiguous_date'],
    ['03/07/2026', 'dmy', '2026-07-03'],
    ['03/07/2026', 'mdy', '2026-03-07'],
    ['07/07/2026', null, '2026-07-07'],
    ['26-07-14', 'ymd', '2026-07-14'],
    ['12/31/99', 'mdy', '1999-12-31'],
    ['14 Jul 2026', null, '2026-07-14'],
    ['14-Jul-26', null, '2026-07-14'],
    ['July 14, 2026', null, '2026-07-14'],
    ['Tue, July 14th, 2026', null, '2026-07-14'],
    ['14. März 2026', null, '2026-03-14'],
    ['14 août 2026', null, '2026-08-14'],
    ['14 de julio de 2026', null, '2026-07-14'],
    ['46217', null, '2026-07-14'],
    ['46217.5', null, '2026-07-14T12:00'],
    ['7/14/2026 4:05 PM', 'mdy', '2026-07-14T16:05'],
    ['7/14/2026 12:00 AM', 'mdy', '2026-07-14T00:00'],
    ['', null, ''],
    ['n/a', null, ''],
    ['31.02.2026', null, 'not_a_date'],
    ['29.02.2024', null, '2024-02-29'],
    ['29.02.2026', null, 'not_a_date'],
    ['07/14/2026', 'dmy', 'not_a_date'],
    ['14/14/2026', null, 'not_a_date'],
    ['2026-13-01', null, 'not_a_date'],
    ['2026-07-14 25:00', null, 'not_a_date'],
    ['yesterday', null, 'not_a_date'],
    ['7.5', null, 'not_a_date'],
    ['14 constructor 2026', null, 'not_a_date'],
  ])('%j with order %j is %j', (text, order, want) => expect(iso(text, order)).toBe(want))
})

test('a time in a column of its own', () => {
  expect(withTime('2026-07-14', '9:45 pm')).toEqual({ kind: 'date', iso: '2026-07-14T21:45' })
  expect(withTime('2026-07-14', '0.5')).toEqual({ kind: 'date', iso: '2026-07-14T12:00' })
  expect(withTime('2026-07-14', 'noon')).toEqual({ kind: 'unreadable', why: 'not_a_date' })
})

test.each<[string, readonly DateOrder[] | null]>([
  ['03/07/2026', ['dmy', 'mdy']],
  ['13/07/2026', ['dmy']],
  ['07/13/2026', ['mdy']],
  ['07/07/2026', null],
  ['2026-07-03', null],
  ['40/41/2026', []],
])('the orders that %j allows are %j', (text, want) => expect(ordersOf(text)).toEqual(want))
