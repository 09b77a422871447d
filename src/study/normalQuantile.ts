/**
 * The value that a standard normal variable stays under with probability `share`, 0 < share < 1.
 * Rational approximations of P. J. Acklam (2003, relative error under 1.15e-9); check: 0.975 gives 1.959964.
 */
export function normalQuantile(share: number): number {
  if (share > 0.5) return -normalQuantile(1 - share)
  if (share < 0.02425) {
    const q = Math.sqrt(-2 * Math.log(share))
    return at(q, TAIL_ABOVE) / (at(q, TAIL_BELOW) * q + 1)
  }
  const q = share - 0.5
  const r = q * q
  return (at(r, MIDDLE_ABOVE) * q) / (at(r, MIDDLE_BELOW) * r + 1)
}

/** Coefficients from the highest power down. */
const MIDDLE_ABOVE = [
  -3.969683028665376e1, 2.209460984245205e2, -2.759285104469687e2, 1.38357751867269e2, -3.066479806614716e1,
  2.506628277459239,
]
const MIDDLE_BELOW = [
  -5.447609879822406e1, 1.615858368580409e2, -1.556989798598866e2, 6.680131188771972e1, -1.328068155288572e1,
]
const TAIL_ABOVE = [
  -7.784894002430293e-3, -3.223964580411365e-1, -2.400758277161838, -2.549732539343734, 4.374664141464968,
  2.938163982698783,
]
const TAIL_BELOW = [7.784695709041462e-3, 3.224671290700398e-1, 2.445134137142996, 3.754408661907416]

function at(x: number, coefficients: readonly number[]): number {
  return coefficients.reduce((sum, coefficient) => sum * x + coefficient, 0)
}
