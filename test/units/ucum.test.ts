import library from '@lhncbc/ucum-lhc'
import { describe, expect, test } from 'vitest'
import { MOLAR_MASS } from '../../src/units/basis'
import { convert } from '../../src/units/convert'
import { readUnit } from '../../src/units/readUnit'
import { UNITS, type Unit, unit } from '../../src/units/unit'

// The second opinion on every factor: the UCUM library of the Lister Hill Center, US National Library of Medicine.
const ucum = library.UcumLhcUtils.getInstance()

const CODED = UNITS.flatMap((u) => (u.ucum === null ? [] : [{ ...u, ucum: u.ucum }]))

/** The first unit of the same dimension and basis; a pair is compared both ways. */
function reference(of: Unit): Unit & { ucum: string } {
  const first = CODED.find((u) => u.dimension === of.dimension && u.basis === of.basis && u.code.startsWith('mg/L'))
  const any = CODED.find((u) => u.dimension === of.dimension && u.basis === of.basis)
  if (any === undefined) throw new RangeError(`${of.code} has no UCUM code`)
  return first ?? any
}

function second(from: Unit & { ucum: string }, value: number, to: Unit & { ucum: string }): number {
  const options =
    from.basis === null
      ? {}
      : { molecularWeight: MOLAR_MASS[from.basis], ...(`${from.ucum}${to.ucum}`.includes('meq') ? { charge: 2 } : {}) }
  const { toVal, msg } = ucum.convertUnitTo(from.ucum, value, to.ucum, options)
  if (toVal === null) throw new Error(msg.join(' '))
  return toVal
}

function close(ours: unknown, theirs: number): void {
  expect(ours).toBeTypeOf('number')
  expect(Math.abs((ours as number) - theirs)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(theirs)))
}

describe('against a general UCUM library', () => {
  test.each(CODED)('$code', (u) => {
    const first = reference(u)
    for (const value of [1, 7.6, -40, 15_000]) {
      close(convert(value, u.code, first.code), second(u, value, first))
      close(convert(value, first.code, u.code), second(first, value, u))
    }
  })

  test('most units have a code there, and those that have none are these', () => {
    const without = UNITS.filter((u) => u.ucum === null && !u.code.startsWith('ppm')).map((u) => u.code)
    expect(without).toEqual(['°dH', '°fH', 'NTU', 'choice'])
  })

  const plain = CODED.filter((u) => !u.code.includes(' as '))
  test.each(plain)('$ucum is read as $code', ({ ucum: written, code, basis }) => {
    const canonical = basis === null ? code : `mg/L as ${basis}`
    const read = readUnit(written, canonical, { profile: 'metric' })
    // grains in a gallon of either nation are the same code read back
    expect(unit(String(read))?.ucum).toBe(written)
  })

  test.each([
    ['[ppm]', 'mg/L as CaCO3', 'ppm as CaCO3'],
    ['[ppm]', 'ppm (air)', 'ppm (air)'],
    ['[sft_i]', 'm²', 'ft²'],
    ['[cft_i]', 'm³', 'ft³'],
  ])('%s for a quantity in %s is %s', (written, canonical, code) => {
    expect(readUnit(written, canonical, { profile: 'metric' })).toBe(code)
  })
})
