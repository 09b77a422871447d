import { expect, test } from 'vitest'
import { checkArgument } from '../../src/engine/check'
import type { LockedFunction, Parameter } from '../../src/functions/define'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'

/** What is said of 20 where 10 is the most. */
function said(unit: string): string {
  const parameter = { name: 'x', unit, min: 0, max: 10 } as Parameter
  const refused = checkArgument({ name: 'INVENTED' } as LockedFunction, parameter, 20, () => {})
  return isProblem(refused) ? sentence(refused) : ''
}

test('a refused argument says its unit with each figure, and none where there is none', () => {
  expect(said('m³')).toMatch(/INVENTED is 20 m³; it works from 0 to 10 m³\.$/)
  expect(said('pH')).toMatch(/INVENTED is 20; it works from 0 to 10\.$/)
  expect(said('1')).toMatch(/INVENTED is 20; it works from 0 to 10\.$/)
})
