import fc from 'fast-check'
import { expect, test } from 'vitest'
import { closureOf } from '../../src/engine/closure'
import { isProblem } from '../../src/words/problem'
import { catalogUnits } from '../../src/worksheet/catalogUnits'
import { parseFormula } from '../../src/worksheet/parse'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { unitFlags } from '../../src/worksheet/unitCheck'

const scope = catalogUnits(shippedCatalog())

const VALUES: Readonly<Record<string, number>> = {
  salt: 3.1,
  target_salt: 2.3,
  total_alkalinity: 1.7,
  calcium_hardness: 2.9,
  free_chlorine: 1.3,
  volume: 2.2,
  hocl_share: 0.4,
}

/** Formulas without a written factor: nothing in them converts. */
const { formula } = fc.letrec<{ formula: string }>((tie) => ({
  formula: fc.oneof(
    { depthSize: 'medium', maxDepth: 4 },
    fc.constantFrom(...Object.keys(VALUES)),
    fc
      .tuple(tie('formula'), fc.constantFrom('*', '/', '*', '/', '+', '-'), tie('formula'))
      .map(([left, operator, right]) => `(${left} ${operator} ${right})`),
    fc.tuple(tie('formula'), fc.constantFrom(0.5, 2, -1)).map(([base, power]) => `(${base}) ^ ${power}`),
    fc
      .tuple(fc.constantFrom('MAX', 'SUM'), tie('formula'), tie('formula'))
      .map(([name, one, two]) => `${name}(${one}; ${two})`),
  ),
}))

/** The formula's number where the readings of these quantities are a hundredth more. */
function worked(text: string, more: readonly string[]): number {
  const parsed = parseFormula(text)
  if (isProblem(parsed)) throw new Error(text)
  const run = closureOf(parsed.tree, {
    functions: new Map(),
    raise: () => {},
    read: (_, name) => () => (VALUES[name] ?? 0) * (more.includes(name) ? 1.01 : 1),
  })
  const found = run?.()
  return typeof found === 'number' ? found : Number.NaN
}

/** Salt that were counted as chloride would have other figures: what is no salt must not change with them. */
test('what passes as CaCO3 grows with what is counted as CaCO3, and with nothing else', () => {
  let passed = 0
  fc.assert(
    fc.property(formula, (text) => {
      const parsed = parseFormula(text)
      if (isProblem(parsed) || unitFlags(parsed.tree, scope, 'mg/L as CaCO3').length > 0) return
      const before = worked(text, [])
      if (!Number.isFinite(before) || Math.abs(before) < 1e-9) return
      passed++
      expect(worked(text, ['total_alkalinity', 'calcium_hardness']) / before).toBeCloseTo(1.01, 6)
      for (const others of [['salt', 'target_salt'], ['free_chlorine'], ['volume']])
        expect(worked(text, others) / before).toBeCloseTo(1, 6)
    }),
    { seed: 20260604, numRuns: process.env.LONG ? 400_000 : 20_000 },
  )
  expect(passed).toBeGreaterThan(500)
})
