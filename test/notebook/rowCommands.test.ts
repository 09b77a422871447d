import { describe, expect, test } from 'vitest'
import { checkEdit } from '../../src/notebook/checkEdit'
import { checkFormula } from '../../src/notebook/checkFormula'
import type { Edit } from '../../src/notebook/edit'
import { fromFile } from '../../src/notebook/file'
import type { Notebook } from '../../src/notebook/notebook'
import { addRow, changeRow, moveRow, removeRow } from '../../src/notebook/rowCommands'
import { toFile } from '../../src/notebook/toFile'
import { isProblem, type Problem } from '../../src/words/problem'
import { catalogFor } from '../../src/worksheet/catalogFor'
import type { OwnFormulaRow } from '../../src/worksheet/ownRow'
import { applied, cell, EMPTY, edited, refusal } from './samples'

const formulaRow = (name: string, formula: string, unit = 'kg'): OwnFormulaRow => ({ name, label: name, unit, formula })

const catalogOf = ({ worksheets, rows }: Notebook) => catalogFor(worksheets, rows)

/** The quantities of a worksheet as they stand. */
function namesIn(notebook: Notebook, worksheet: string): string[] {
  const found = catalogOf(notebook).worksheets.find(({ id }) => id === worksheet)
  const groups = found?.groups.filter(({ hidden }) => !hidden) ?? []
  return groups.flatMap(({ rows }) => rows.map((row) => (typeof row === 'string' ? row : row.name)))
}

function idOf(notebook: Notebook, name: string): string {
  return Object.values(notebook.rows).find(({ row }) => row.name === name)?.id ?? ''
}

function added(notebook: Notebook, under: string, row: OwnFormulaRow): Notebook {
  return edited(notebook, addRow(notebook, 'salt', under, row))
}

function usable(edit: Edit | Problem): Edit {
  if (isProblem(edit)) throw new Error(refusal(edit))
  return edit
}

describe('a row of one’s own', () => {
  const one = added(EMPTY, 'salt_mass', formulaRow('my_two', '2 * salt_mass'))
  const two = added(one, 'my_two', formulaRow('my_three', 'my_two + salt_mass'))
  const three = added(two, 'salt_mass', formulaRow('my_first', '3 * salt_mass'))

  test('stands under the row that it was added to, be that shipped or own', () => {
    const names = namesIn(three, 'salt')
    const at = names.indexOf('salt_mass')
    expect(names.slice(at, at + 4)).toEqual(['salt_mass', 'my_first', 'my_two', 'my_three'])
    expect(catalogOf(three).quantities.get('my_two')).toMatchObject({ worksheet: 'salt', reads: ['salt_mass'] })
    expect(catalogOf(three).quantities.get('salt_mass')?.readBy).toContain('my_two')
  })

  test('moves up and down past shipped rows, and no further than the ends', () => {
    let now = three
    const shippedAround = namesIn(EMPTY, 'salt')
    const start = namesIn(now, 'salt').indexOf('my_two')
    now = edited(now, usable(moveRow(now, idOf(now, 'my_two'), namesIn(now, 'salt'), -1)))
    expect(namesIn(now, 'salt').indexOf('my_two')).toBe(start - 1)
    for (let step = 0; ; step++) {
      const before = namesIn(now, 'salt')
      const edit = moveRow(now, idOf(now, 'my_two'), before, 1)
      if (isProblem(edit)) {
        expect(before.at(-1)).toBe('my_two')
        break
      }
      now = edited(now, edit)
      expect(namesIn(now, 'salt').indexOf('my_two')).toBe(before.indexOf('my_two') + 1)
      expect(step).toBeLessThan(50)
    }
    expect(namesIn(now, 'salt').filter((name) => !name.startsWith('my_'))).toEqual(shippedAround)
  })

  test('is taken out with what was typed over it, and not while a formula reads it', () => {
    expect(refusal(removeRow(three, catalogOf(three), idOf(three, 'my_two')))).toContain('read by my_three')
    const typed = edited(three, cell('first', 'my_three', { kind: 'value', entered: '3', unit: 'kg', canonical: 3 }))
    const reading = edited(typed, cell('first', 'salt_mass', { kind: 'formula', text: 'my_first * 2' }))
    expect(refusal(removeRow(reading, catalogOf(reading), idOf(reading, 'my_first')))).toContain('read by salt_mass')
    const gone = edited(typed, usable(removeRow(typed, catalogOf(typed), idOf(typed, 'my_three'))))
    expect(Object.keys(gone.cells)).toEqual([])
    expect(Object.values(gone.rows).map(({ row }) => row.name)).toEqual(['my_two', 'my_first'])
  })

  test('renamed, is followed by every formula that reads it', () => {
    const typed = edited(
      three,
      cell('first', 'my_two', { kind: 'value', entered: '3', unit: 'kg', canonical: 3 }),
      cell('first', 'salt_mass', { kind: 'formula', text: "baseline.my_two + 'first'.my_two" }),
    )
    const edit = usable(changeRow(typed, idOf(typed, 'my_two'), formulaRow('my_pair', '2 * salt_mass')))
    expect(checkEdit(typed, edit, catalogOf(typed), checkFormula)).toBeNull()
    const { notebook, inverse } = applied(typed, edit)
    expect(notebook.rows[idOf(notebook, 'my_three')]?.row.formula).toBe('my_pair + salt_mass')
    expect(notebook.cells['first/salt_mass']).toMatchObject({ text: "baseline.my_pair + 'first'.my_pair" })
    expect(notebook.cells['first/my_pair']).toMatchObject({ canonical: 3 })
    expect(notebook.cells['first/my_two']).toBeUndefined()
    expect(edited(notebook, inverse)).toEqual(typed)
  })

  test('cannot take the name of another quantity', () => {
    const check = (edit: Edit) => refusal(checkEdit(three, edit, catalogOf(three), checkFormula))
    expect(check(addRow(three, 'salt', 'salt_mass', formulaRow('ph', '1')))).toContain('“ph” already')
    expect(check(addRow(three, 'salt', 'salt_mass', formulaRow('my_two', '1')))).toContain('“my_two” already')
    expect(check(addRow(three, 'salt', 'salt_mass', formulaRow('my_x', '1', 'furlong')))).toContain('furlong')
    expect(check(addRow(three, 'salt', 'salt_mass', formulaRow('my_x', '1')))).toBe('not refused')
  })

  test('gives no words; one that a notebook has is still read, mended, moved and taken out', () => {
    const words = formulaRow('my_word', 'IF(ph > 7.8; "acid"; "none")', 'choice')
    const check = (book: Notebook, edit: Edit) => refusal(checkEdit(book, edit, catalogOf(book), checkFormula))
    expect(check(three, addRow(three, 'salt', 'my_two', words))).toBe(
      'A row of your own gives a number, or yes or no, not words. Say TRUE or FALSE, or give it a unit.',
    )
    const number = usable(changeRow(three, idOf(three, 'my_two'), { ...words, name: 'my_two' }))
    expect(check(three, number)).toContain('not words')
    const old = added(three, 'my_two', words)
    expect(fromFile(toFile(old), 'x.json')).toEqual(old)
    const id = idOf(old, 'my_word')
    const renamed = usable(changeRow(old, id, { ...words, name: 'my_advice' }))
    const moved = usable(moveRow(old, id, namesIn(old, 'salt'), -1))
    const removed = usable(removeRow(old, catalogOf(old), id))
    for (const edit of [renamed, moved, removed]) expect(check(old, edit)).toBe('not refused')
  })

  test('is in the notebook’s file', () => {
    expect(fromFile(toFile(three), 'x.json')).toEqual(three)
    const twice = {
      ...three,
      rows: { ...three.rows, other: { ...(three.rows[idOf(three, 'my_two')] ?? {}), id: 'other' } },
    }
    expect(fromFile(JSON.stringify(twice), 'x.json')).toMatchObject([{ code: 'file_row_name_taken' }])
  })
})
