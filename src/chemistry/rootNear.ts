/**
 * Root of an increasing function: walks from `guess` in doubling steps until the sign changes, then closes in by
 * Chandrupatla's method (Adv. Eng. Software 28 (1997) 145-149), which never leaves the bracket.
 * Answers with undefined where `low..high` holds no sign change or the function is not a number.
 */
export function rootNear(
  f: (x: number) => number,
  guess: number,
  step: number,
  low: number,
  high: number,
  tolerance: number,
): number | undefined {
  let a = Math.min(Math.max(guess, low), high)
  let fa = f(a)
  if (fa === 0) return a
  const way = fa > 0 ? -1 : 1
  const wall = way > 0 ? high : low
  let b = a
  let fb = fa
  for (let stride = step; ; stride *= 4) {
    a = b
    fa = fb
    b = (wall - (a + way * stride)) * way > 0 ? a + way * stride : wall
    fb = f(b)
    if (fb === 0) return b
    if (!(fa * fb > 0)) break
    if (b === wall) return undefined
  }
  if (Number.isNaN(fa * fb)) return undefined
  let c = a
  let fc = fa
  let t = fa / (fa - fb)
  for (let i = 0; i < 100; i++) {
    const x = a + t * (b - a)
    const fx = f(x)
    if (Number.isNaN(fx)) return undefined
    if (fx === 0) return x
    if (fx > 0 === fa > 0) {
      c = a
      fc = fa
    } else {
      c = b
      fc = fb
      b = a
      fb = fa
    }
    a = x
    fa = fx
    const best = Math.abs(fa) < Math.abs(fb) ? a : b
    const least = tolerance / Math.abs(b - c)
    if (Math.abs(b - a) <= tolerance || least > 0.5) return best
    const xi = (a - b) / (c - b)
    const phi = (fa - fb) / (fc - fb)
    t =
      phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi
        ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
        : 0.5
    t = Math.min(1 - least, Math.max(least, t))
  }
  return undefined
}
