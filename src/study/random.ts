/**
 * Numbers from 0 up to, not including, 1; the same ones for the same seed, so that a study worked out again says the same.
 * Mulberry32 (T. Ettinger, 2017, public domain): 32 bits of state, far more than shuffling a few thousand places needs.
 */
export function random(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}
