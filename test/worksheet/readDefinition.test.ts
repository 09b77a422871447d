import { describe, expect, test } from 'vitest'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'
import { parseDefinitionText } from '../../src/worksheet/parseDefinitionText'
import { isDefinition, readDefinition } from '../../src/worksheet/readDefinition'
import { choice, computed, definition, input } from './definitions'

const good = definition('mine', [
  input('a', {
    plausible: [1, 50],
    default: 3,
    target: [{ when: { c: ['x'], b: { below: 28 } }, low: 1, source: 's' }],
  }),
  computed('b', 'a * 2', { checks: [{ notice: 'disagree:b', when: 'b > 3' }] }),
  choice('c', ['x', 'y'], { default: 'x' }),
])

function said(json: unknown): string {
  const read = readDefinition(json, 'mine.json')
  return isDefinition(read) ? 'read' : read.map(sentence).join('\n')
}

function saidOfRow(row: unknown): string {
  return said({ ...good, groups: [{ id: 'rows', rows: [row] }] })
}

test('a good definition is given back as it is', () => {
  expect(readDefinition(good, 'mine.json')).toEqual(good)
})

describe('what is wrong is said with file, path and reason', () => {
  test('of the whole', () => {
    expect(
      [
        said(null),
        said([]),
        said({ ...good, format: 'other' }),
        said({ ...good, version: 2 }),
        said({ ...good, id: 'My Sheet' }),
        said({ ...good, edition: 0 }),
        said({ ...good, edition: 1.5 }),
        said({ ...good, extra: 1 }),
        said({ ...good, takes: 'ph' }),
        said({ ...good, groups: [] }),
        said({ format: 'basinbook-worksheet', version: 1, id: 'mine' }),
        said({ ...good, label: '' }),
        said({ ...good, help: 'x'.repeat(3_000) }),
        said({ ...good, solves: [{ id: 'w', function: 'WATER', inputs: { 'Bad key': 'ph' } }] }),
      ].join('\n'),
    ).toMatchInlineSnapshot(`
      "mine.json: names and values in curly brackets are expected here, not null.
      mine.json: names and values in curly brackets are expected here, not [].
      mine.json, format: "other" is not accepted here; use "basinbook-worksheet".
      mine.json, version: 2 is not accepted here; use 1.
      mine.json, id: "My Sheet" is no name; a name has at most 64 small letters a to z, digits and _, and begins with a letter.
      mine.json, edition: 0 is too small; at least 1 is accepted.
      mine.json, edition: a whole number is expected here, not 1.5.
      mine.json, extra: nothing of this name is known here.
      mine.json, takes: a list in square brackets is expected here, not "ph".
      mine.json, groups: at least one entry is expected here.
      mine.json, edition is missing.
      mine.json, takes is missing.
      mine.json, groups is missing.
      mine.json, label: the text is empty.
      mine.json, help: the text has more than 2000 characters.
      mine.json, solves[0].inputs.Bad key: "Bad key" is no name; a name has at most 64 small letters a to z, digits and _, and begins with a letter."
    `)
  })

  test('of a row', () => {
    expect(
      [
        saidOfRow(7),
        saidOfRow('Bad name'),
        saidOfRow({ ...input('a'), name: 'A' }),
        saidOfRow({ ...input('a'), unit: 5 }),
        saidOfRow({ ...input('a'), input: 'text' }),
        saidOfRow({ ...input('a'), accept: [0] }),
        saidOfRow({ ...input('a'), accept: ['0', 1] }),
        saidOfRow({ ...input('a'), accept: [0, 1, 2] }),
        saidOfRow({ ...input('a'), decimals: 9 }),
        saidOfRow({ ...input('a'), colour: 'red' }),
        saidOfRow({ ...input('a'), default: null }),
        saidOfRow({ ...input('a'), target: [{ low: 1 }] }),
        saidOfRow({ ...input('a'), target: [{ low: 1, source: 's', when: { shell: 'vinyl' } }] }),
        saidOfRow({ ...input('a'), target: [{ low: 1, source: 's', when: { age: { over: 3 } } }] }),
        saidOfRow({ ...choice('a', ['x', 'y']), choices: ['x'] }),
        saidOfRow({ ...choice('a', ['x', 'y']), unit: 'mg/L' }),
        saidOfRow({ ...computed('a', '1'), formula: '' }),
        saidOfRow({ ...computed('a', '1'), accept: [0, 1] }),
        saidOfRow({ ...computed('a', '1'), when_missing: { of: 'b', value: 'none', source: 's' } }),
        saidOfRow(computed('a', '1', { checks: [{ notice: 'too high', when: 'a > 1' }] })),
        saidOfRow({ name: 'a', unit: 'mg/L' }),
      ].join('\n'),
    ).toMatchInlineSnapshot(`
      "mine.json, groups[0].rows[0]: names and values in curly brackets are expected here, not 7.
      mine.json, groups[0].rows[0]: "Bad name" is no name; a name has at most 64 small letters a to z, digits and _, and begins with a letter.
      mine.json, groups[0].rows[0].name: "A" is no name; a name has at most 64 small letters a to z, digits and _, and begins with a letter.
      mine.json, groups[0].rows[0].unit: a text in quotation marks is expected here, not 5.
      mine.json, groups[0].rows[0].input: "text" is not accepted here; use "number", "choice".
      mine.json, groups[0].rows[0].accept: at least 2 entries are expected here.
      mine.json, groups[0].rows[0].accept[0]: a number is expected here, not "0".
      mine.json, groups[0].rows[0].accept: at most 2 entries are accepted here.
      mine.json, groups[0].rows[0].decimals: 9 is too large; at most 6 is accepted.
      mine.json, groups[0].rows[0].colour: nothing of this name is known here.
      mine.json, groups[0].rows[0].default: a number is expected here, not null.
      mine.json, groups[0].rows[0].target[0].source is missing.
      mine.json, groups[0].rows[0].target[0].when.shell: a list in square brackets is expected here, not "vinyl".
      mine.json, groups[0].rows[0].target[0].when.age.over: nothing of this name is known here.
      mine.json, groups[0].rows[0].choices: at least 2 entries are expected here.
      mine.json, groups[0].rows[0].unit: "mg/L" is not accepted here; use "choice".
      mine.json, groups[0].rows[0].formula: the text is empty.
      mine.json, groups[0].rows[0].accept: nothing of this name is known here.
      mine.json, groups[0].rows[0].when_missing.value: a number is expected here, not "none".
      mine.json, groups[0].rows[0].checks[0].notice: "too high" is no notice; write a kind and a name, as in "disagree:tds".
      mine.json, groups[0].rows[0].formula is missing."
    `)
  })

  test('all problems at once, but not without end', () => {
    const rows = Array.from({ length: 60 }, () => ({ ...input('a'), unit: 5 }))
    const read = readDefinition({ ...good, groups: [{ id: 'rows', rows }] }, 'mine.json')
    expect(isDefinition(read) ? 0 : read.length).toBe(50)
  })
})

describe('the text of a file', () => {
  const codes = (text: string) => {
    const read = parseDefinitionText(text, 'mine.json')
    return isDefinition(read) ? 'read' : read.map((p) => (isProblem(p) ? p.code : '')).join(' ')
  }

  test.each([
    ['a good one', JSON.stringify(good), 'read'],
    ['with a byte order mark', `\uFEFF${JSON.stringify(good)}`, 'read'],
    ['no JSON', '{', 'json_unreadable'],
    ['huge', `"${'x'.repeat(1_000_000)}"`, 'file_too_large'],
    ['deep', `${'['.repeat(5_000)}${']'.repeat(5_000)}`, 'json_too_deep'],
    ['a prototype key', JSON.stringify(good).replace('{', '{"__proto__": {},'), 'json_reserved_key'],
    ['a constructor key', JSON.stringify(good).replace('"takes"', '"constructor":1,"takes"'), 'json_reserved_key'],
    ['a number too large', JSON.stringify(good).replace('"edition":1', '"edition":1e999'), 'json_not_data'],
  ])('%s', (_, text, code) => {
    expect(codes(text)).toBe(code)
  })
})
