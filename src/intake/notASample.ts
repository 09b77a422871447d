import { spelling } from './spelling'

/**
 * Names of rows and columns that stand among samples and are none: what was worked out of them, what is wanted, what tells
 * how well the laboratory works. Whole names only, so that a pool called Maximilian stays one.
 */
const NAMES: ReadonlySet<string> = new Set(
  [
    'mean|means|average|averages|avg|median|min|max|minimum|maximum|min max|std|stdev|std dev|std deviation|standard deviation|sd|rsd|rpd|cv|duplicate rpd|relative percent difference|relative standard deviation|coefficient of variation',
    'blank|method blank|field blank|lab blank|laboratory blank|trip blank|reagent blank|equipment blank|rinse blank|calibration blank|preparation blank|matrix spike|matrix spike duplicate|laboratory control sample|lcs|spike recovery|recovery',
    'target|targets|limit|limits|limit value|limit values|detection limit|reporting limit|quantitation limit|range|ranges|reference range|guideline|guidelines|guideline value|standard|wanted',
    'mittel|mittelwert|durchschnitt|standardabweichung|blindwert|blindprobe|feldblindwert|grenzwert|grenzwerte|sollwert|sollwerte|richtwert|referenzwert|bestimmungsgrenze|nachweisgrenze',
    'moyenne|mediane|ecart type|blanc|blanc de terrain|blanc de methode|limite|limites|valeur limite|valeur guide|reference de qualite|norme|limite de detection|limite de quantification',
    'media|promedio|mediana|minimo|maximo|desviacion estandar|desviacion tipica|blanco|blanco de campo|blanco de metodo|valor limite|limite legal|valor guia|limite de deteccion|limite de cuantificacion',
  ]
    .join('|')
    .split('|'),
)

/** Whether one of these names of a row or column says that it is no sample. */
export function isNoSample(...names: readonly string[]): boolean {
  // most names and all dates have a figure in them, and none of these has
  return names.some((name) => name !== '' && name.length < 60 && !/\d/.test(name) && NAMES.has(spelling(name)))
}

/** Headings beside samples that stand across, and not names of rows among them: how it was measured, remarks. */
const BESIDE: ReadonlySet<string> = new Set(
  'reference|rl|mdl|loq|method|methods|remark|remarks|comment|comments|soll|bereich|bg|methode|verfahren|bemerkung|remarque|metodo|observaciones|unit|units|einheit|unite|unidad'.split(
    '|',
  ),
)

export function isBesideSamples(name: string): boolean {
  return isNoSample(name) || (name.length < 60 && BESIDE.has(spelling(name)))
}

/** Whether the kind of a sample is one that a laboratory takes for itself. */
export function isForQuality(kind: string): boolean {
  return /^\s*(?:quality control|qa ?\/ ?qc|qc)\b/i.test(kind) || isNoSample(kind)
}

const REJECTED: ReadonlySet<string> = new Set(
  'rejected|reject|r|invalid|not valid|invalidated|void|voided|unusable|failed|fail|cancelled|canceled|verworfen|abgelehnt|ungultig|rejete|rejetee|invalide|incorrecte|rechazado|rechazada|invalido|no valido|anulado'.split(
    '|',
  ),
)

/** Whether the status of a result says that it is not to be used. */
export function isRejected(status: string): boolean {
  return status !== '' && status.length < 60 && REJECTED.has(spelling(status))
}
