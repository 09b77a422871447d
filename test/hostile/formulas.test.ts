import { describe, expect, test } from 'vitest'
import { checkNotebook } from '../../src/notebook/checkNotebook'
import { fromFile } from '../../src/notebook/file'
import type { Notebook } from '../../src/notebook/notebook'
import { toFile } from '../../src/notebook/toFile'
import { sentence } from '../../src/words/say'
import { catalogFor } from '../../src/worksheet/catalogFor'
import { cell, EMPTY, edited } from '../notebook/samples'

const notebook = (text: string): Notebook => edited(EMPTY, cell('first', 'ph', { kind: 'formula', text }))

/** All that is said against a notebook file with this formula in a cell. */
function against(text: string): string[] {
  const read = fromFile(toFile(notebook(text)), 'it')
  if (Array.isArray(read)) return read.map(sentence)
  return checkNotebook(read, catalogFor({}), 'it').map(sentence)
}

describe('a formula in a notebook file', () => {
  test.each([
    'WEBSERVICE("http://example.invalid/")',
    'HYPERLINK("http://example.invalid/")',
    'IMPORTDATA("http://example.invalid/")',
    'CALL("kernel32"; 1)',
    'INDIRECT("A1")',
    'EXEC("ls")',
    'OFFSET(A1; 1; 1)',
    'RAND()',
    'NOW()',
    'REPT("x"; 1000000)',
    'IFERROR(1/0; 1)',
    'constructor(1)',
    '__proto__',
    "cmd|'/c calc'!A1",
    'Sheet1!A1',
    '{1;2;3}',
    'fetch("http://example.invalid/")',
  ])('%s calls nobody and is refused at its place', (text) => {
    const words = against(text)
    expect(words.length).toBeGreaterThan(0)
    expect(words[0]).toMatch(/^it, cells\.first\/ph: \S/)
  })

  test.each([
    ['brackets without end', `${'('.repeat(1_000)}1${')'.repeat(1_000)}`],
    ['calls within calls', `${'ABS('.repeat(500)}1${')'.repeat(500)}`],
    ['a sum of thousands', Array.from({ length: 1_900 }, () => '1').join('+')],
    ['a tower of powers', Array.from({ length: 900 }, () => '9').join('^')],
    ['minus upon minus', `${'-'.repeat(3_000)}1`],
    ['a text without end', `"${'x'.repeat(3_900)}`],
    ['more than there is room for', '1'.repeat(4_001)],
  ])('of %s is refused before anything is worked out', (_, text) => {
    const start = performance.now()
    const words = against(text)
    expect(words.length).toBeGreaterThan(0)
    expect(words[0]).toMatch(/^it, cells\.first\/ph(\.text)?:? \S/)
    expect(performance.now() - start).toBeLessThan(2_000)
  })
})
