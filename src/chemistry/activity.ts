/**
 * The two coefficients of Debye and Hückel for water at T kelvin, molar scale: A in (L/mol)^½, B in (L/mol)^½/Å.
 * From the relative permittivity of Malmberg & Maryott, J. Res. NBS 56 (1956) 1-8 (0 to 100 °C) and the density of Kell,
 * J. Chem. Eng. Data 20 (1975) 97-105 (0 to 150 °C).
 */
export function debyeHuckel(T: number): { readonly a: number; readonly b: number } {
  const t = T - 273.15
  const permittivity = 87.74 - t * (0.40008 - t * (9.398e-4 - t * 1.41e-6))
  const density =
    (0.99983952 +
      t * (16.945176e-3 - t * (7.9870401e-6 + t * (46.170461e-9 - t * (105.56302e-12 - t * 280.54253e-15))))) /
    (1 + 16.87985e-3 * t)
  const scaled = permittivity * T
  return { a: (1.82483e6 * Math.sqrt(density)) / scaled ** 1.5, b: 50.2916 * Math.sqrt(density / scaled) }
}

/** How an ion's activity coefficient is found. */
export type ActivityModel =
  /** WATEQ Debye-Hückel: log γ = -A z² √I / (1 + B å √I) + b I; Truesdell & Jones, J. Res. USGS 2 (1974) 233-248 */
  | { readonly model: 'wateq'; readonly size: number; readonly b: number }
  /** Davies: log γ = -A z² (√I / (1 + √I) - 0.3 I), where no ion size is published */
  | { readonly model: 'davies' }
  /** neutral species: log γ = b I, b = 0.1 by custom */
  | { readonly model: 'neutral'; readonly b: number }

/**
 * The three models in one form: log10 γ = -steep √I / (1 + reach √I) + linear I, with I in mol/L and the coefficients
 * of `debyeHuckel`.
 */
export interface GammaTerms {
  readonly steep: number
  readonly reach: number
  readonly linear: number
}

/** The terms of a species of a given charge. */
export function gammaTerms(model: ActivityModel, charge: number, a: number, b: number): GammaTerms {
  const steep = a * charge * charge
  if (model.model === 'neutral') return { steep: 0, reach: 1, linear: model.b }
  if (model.model === 'davies') return { steep, reach: 1, linear: 0.3 * steep }
  return { steep, reach: b * model.size, linear: model.b }
}

/**
 * pfm of Standard Methods 2330 B: -log10 of a monovalent ion's activity coefficient by the Davies-type equation,
 * A = 1.82e6 (E T)^-1.5, E = 60954 / (T + 116) - 68.937. T in kelvin, I in mol/L; used to 0.5 mol/L.
 */
export function standardMethodsPfm(T: number, I: number): number {
  const permittivity = 60954 / (T + 116) - 68.937
  const root = Math.sqrt(I)
  return 1.82e6 * (permittivity * T) ** -1.5 * (root / (1 + root) - 0.3 * I)
}
