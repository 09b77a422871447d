import { expect, test } from 'vitest'
import { createCsvReader } from '../../src/intake/records'
import { recordCsv } from '../../src/ui/record/recordCsv'
import { EMPTY, number, sample } from '../notebook/samples'

const NOTEBOOK = {
  ...EMPTY,
  samples: {
    b: {
      ...sample('b', {
        ph: number(7.4),
        salt: { kind: 'limit', side: 'above', entered: '5000', unit: 'mg/L', canonical: 5000 } as const,
      }),
      name: '=cmd|calc',
      date: '2026-05-04',
    },
    a: { ...sample('a', { ph: number(-0.5) }), name: 'He said "hi", then left', date: '2026-05-01T09:30' },
    other: { ...sample('other', { ph: number(7) }, true), date: '2026-05-02' },
  },
  additions: {
    x: {
      id: 'x',
      date: '2026-05-02',
      product: 'hydrochloric_acid',
      amount: 0.75,
      unit: 'L',
      strength: 31.45,
      basis: 'mass_percent',
      note: '+1 for luck',
    } as const,
  },
}

test('samples and additions stand by date, other pools’ samples are left out, and nothing runs as a formula', () => {
  const text = recordCsv(NOTEBOOK)
  const reader = createCsvReader(',')
  const rows = [...reader.push(text), ...reader.end()].map(({ cells }) => cells)
  expect(rows).toEqual([
    ['date', 'sample', 'product', 'amount', 'unit', 'strength', 'basis', 'note', 'ph', 'salt'],
    ['2026-05-01T09:30', 'He said "hi", then left', '', '', '', '', '', '', '-0.5', ''],
    ['2026-05-02', '', 'hydrochloric_acid', '0.75', 'L', '31.45', 'mass_percent', "'+1 for luck", '', ''],
    ['2026-05-04', "'=cmd|calc", '', '', '', '', '', '', '7.4', '>5000'],
  ])
})
