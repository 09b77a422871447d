import { describe, expect, test } from 'vitest'
import { decimalsWritten, figures } from '../../src/ui/grid/figures'

describe('figures', () => {
  test.each([
    ['7.70', { whole: '7', fraction: '.70' }],
    ['−0.05', { whole: '−0', fraction: '.05' }],
    ['13,536', { whole: '13,536', fraction: '' }],
  ])('%s', (text, parts) => expect(figures(text)).toEqual(parts))
})

describe('decimalsWritten', () => {
  test.each([
    ['7.70', 2],
    ['7.', 0],
    ['95', 0],
    ['15,000', 0],
    ['-0.3', 1],
    ['−0.30', 2],
    ['59 °F', 0],
    ['1/3', null],
    ['5 ft 6 in', null],
    ['1.2e3', null],
  ])('%s', (entered, decimals) => expect(decimalsWritten(entered)).toBe(decimals))
})
