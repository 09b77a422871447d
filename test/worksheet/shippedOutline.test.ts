import { expect, test } from 'vitest'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import graph from '../../src/worksheet/shippedGraph.build'
import { shippedOutline } from '../../src/worksheet/shippedOutline'

test('what the build puts into the page is plain data', () => {
  expect(JSON.parse(JSON.stringify(graph))).toEqual(graph)
})

test('the page knows of every shipped quantity what the catalog knows, in the same order', () => {
  const known = [...shippedCatalog().quantities.values()].map(({ checks, refusals, formula, ...rest }) => ({
    ...rest,
    formula: formula && { text: formula.text },
  }))
  expect([...shippedOutline().quantities.values()]).toEqual(known)
  expect([...shippedOutline().quantities.keys()]).toEqual([...shippedCatalog().quantities.keys()])
})

test('the page knows the worksheets, and what each solve gives', () => {
  expect(shippedOutline().worksheets).toEqual(shippedCatalog().worksheets)
  const given = [...shippedCatalog().solves.values()].map(({ worksheet: _, inputs, ...solve }) => [
    solve.id,
    { ...solve, inputs: inputs.filter((input) => input !== undefined) },
  ])
  expect([...shippedOutline().solves]).toEqual(given)
})
