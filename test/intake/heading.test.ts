import { describe, expect, test } from 'vitest'
import { matchColumn } from '../../src/intake/columns'
import { known } from './known'

const byName = new Map(known.map((one) => [one.name, one]))
const beside = { ions: false, french: false, unit: null }
const match = (heading: string, more: Partial<typeof beside> = {}) => {
  const { column, question } = matchColumn(0, heading, byName, { ...beside, ...more })
  if (question !== null) return `? ${question.choices.join(' | ')}`
  if (column.role !== 'quantity') return column.role === 'note' ? `note: ${column.why[0]?.code}` : column.role
  return `${column.quantity} ${column.unit?.code}${column.unit?.times === 1 ? '' : ` x${column.unit?.times}`}`
}

describe('a heading', () => {
  test.each([
    ['ph', 'ph pH'],
    ['temperature [°F]', 'temperature °F'],
    ['total_alkalinity', 'total_alkalinity mg/L as CaCO3'],
    ['pH', 'ph pH'],
    ['pH (field)', 'ph pH'],
    ['pH-Wert [-]', 'ph pH'],
    ['Free Cl (ppm)', 'free_chlorine ppm as Cl2'],
    ['Free Chlorine, mg/L', 'free_chlorine mg/L as Cl2'],
    ['FREE CHLORINE MG/L', 'free_chlorine mg/L as Cl2'],
    ['Chlorine (free) mg/L', 'free_chlorine mg/L as Cl2'],
    ['Chlor, frei [mg/l]', 'free_chlorine mg/L as Cl2'],
    ['freies Chlor mg/l', 'free_chlorine mg/L as Cl2'],
    ['Chlore libre (mg/l)', 'free_chlorine mg/L as Cl2'],
    ['Total chlorine DPD mg/L', 'total_chlorine mg/L as Cl2'],
    ['fc_ppm', 'free_chlorine ppm as Cl2'],
    ['TA ppm as CaCO3', 'total_alkalinity ppm as CaCO3'],
    ['Alkalinity, total (mg/L CaCO3)', 'total_alkalinity mg/L as CaCO3'],
    ['Alkalinity as HCO3 (mg/L)', 'total_alkalinity mg/L as HCO3'],
    ['Alkalinity as CaCO3 (meq/L)', 'total_alkalinity meq/L'],
    ['Säurekapazität KS4,3 (mmol/l)', 'total_alkalinity mmol/L as HCO3'],
    ['Saeurekapazitaet KS 4,3 mmol/l', 'total_alkalinity mmol/L as HCO3'],
    ['KH °dH', 'total_alkalinity °dH'],
    ['TAC (°f)', 'total_alkalinity °fH'],
    ['TH (°f)', 'total_hardness °fH'],
    ['Gesamthärte (mmol/l)', 'total_hardness mmol/L as CaCO3'],
    ['Hardness, Ca + Mg (mg/L CaCO3)', 'total_hardness mg/L as CaCO3'],
    ['Calcium hardness (ppm)', 'calcium_hardness ppm as CaCO3'],
    ['Calcium as CaCO3 mg/L', 'calcium_hardness mg/L as CaCO3'],
    ['Ca (mg/L)', 'calcium_hardness mg/L as Ca'],
    ['Calcium (mmol/l)', 'calcium_hardness mmol/L as Ca'],
    ['Stabiliser (ppm)', 'cyanuric_acid ppm'],
    ['Cyanursäure mg/l', 'cyanuric_acid mg/L'],
    ['NaCl g/L', 'salt g/L as NaCl'],
    ['Salz (%)', 'salt g/L as NaCl x10'],
    ['Chloride mg/L', 'chloride mg/L'],
    ['Cl- (mg/L)', 'chloride mg/L'],
    ['EC (mS/cm)', 'conductivity mS/cm'],
    ['Conductivity [uS/cm @25C]', 'conductivity µS/cm'],
    ['Leitfähigkeit bei 20 °C (µS/cm)', 'conductivity µS/cm x1.116'],
    ['Sp. Cond. (µmho/cm)', 'conductivity µS/cm'],
    ['Water Temp °F', 'temperature °F'],
    ['T (°C)', 'temperature °C'],
    ['Temp_F', 'temperature °F'],
    ['Temperature [Cel]', 'temperature °C'],
    ['Temperature [degF]', 'temperature °F'],
    ['Boron (mg/L)', 'borate mg/L as B'],
    ['Boric acid (mg/L)', 'borate mg/L as H3BO3'],
    ['Phosphate (ppb)', 'phosphate µg/L as PO4'],
    ['PO4-P (mg/L)', 'phosphate mg/L as P'],
    ['Ammonia-N (mg/L)', 'ammonia mg/L as N'],
    ['Ammonia as N, mg/L', 'ammonia mg/L as N'],
    ['NH4 (mg/L)', 'ammonia mg/L as NH4'],
    ['ORP mV', 'orp mV'],
    ['Turbidity FNU', 'turbidity NTU'],
    ['TDS (ppm)', 'tds ppm'],
    ['Alky pH 4.5 (mg/L)', 'total_alkalinity mg/L as CaCO3'],
    ['Alkalinity to pH 4.5 as CaCO3 (mg/L)', 'total_alkalinity mg/L as CaCO3'],
    ['Ca++ (mg/L)', 'calcium_hardness mg/L as Ca'],
    ['Mg++ (mg/L)', 'magnesium mg/L'],
    ['elektr. Leitfähigkeit (µS/cm)', 'conductivity µS/cm'],
    ['Calcium hardness (grains/gal)', 'calcium_hardness gpg'],
    ['Sulfate as SO4 (mg/L)', 'sulfate mg/L'],
    ['Cuivre (µg/L)', 'copper µg/L'],
  ])('%j is %j', (heading, want) => expect(match(heading)).toBe(want))

  test.each([
    ['Chlorine (ppm)', '? free_chlorine | total_chlorine'],
    ['Cl (mg/L)', '? free_chlorine | total_chlorine | chloride'],
    ['Calcium (mg/L)', '? mg/L as Ca | mg/L as CaCO3'],
    ['Calcium', '? mg/L as Ca | mg/L as CaCO3'],
    ['Ammonia (mg/L)', '? mg/L as N | mg/L as NH3 | mg/L as NH4'],
    ['Salt (ppt)', '? g/L | ng/L'],
  ])('%j is asked: %j', (heading, want) => expect(match(heading)).toBe(want))

  test.each([
    ['Carbonate alkalinity (mg/L)', 'note: not_total_alkalinity'],
    ['Alkalinity, bicarbonate (mg/L)', 'note: not_total_alkalinity'],
    ['Bicarbonate (mg/L)', 'note: not_total_alkalinity'],
    ['Phenolphthalein alkalinity', 'note: not_total_alkalinity'],
    ['Basekapazität KB8,2 (mmol/l)', 'note: base_capacity'],
    ['Non-carbonate hardness (mg/L)', 'note: not_total_hardness'],
    ['Free chlorine (°C)', 'note: unit_wrong_dimension'],
    ['Salt (mg/L as Ca)', 'note: unit_wrong_basis'],
    ['Conductivity µS/cm (18 °C)', 'note: unit_reference_temperature'],
    // a third of the sulfate, and another substance than the hardness
    ['Sulfate (mg/L as S)', 'note: basis_unknown'],
    ['Sulfate (mg/L as SO4-S)', 'note: basis_unknown'],
    ['Sulphate as S, mg/L', 'note: basis_unknown'],
    ['Sulfate as S', 'note: basis_unknown'],
    ['Sulfate-S (mg/L)', 'note: unknown'],
    ['Sulphate mg/L S', 'note: unknown'],
    ['Hardness as CaO (mg/L)', 'note: basis_unknown'],
    ['Chlorite (mg/L)', 'note: unknown'],
    ['Sulfite (mg/L)', 'note: unknown'],
    ['Bromate (mg/L)', 'note: unknown'],
    ['Nitrate (mg/L)', 'note: unknown'],
    ['Potassium (mg/L)', 'note: unknown'],
    ['', 'note: unknown'],
    ['constructor', 'note: unknown'],
    // what is left without the words that do not matter is a letter
    ['Pool B', 'note: unknown'],
    ['Sample B', 'note: unknown'],
    ['Lab T', 'note: unknown'],
  ])('%j is kept as a note: %j', (heading, want) => expect(match(heading)).toBe(want))

  test('what stands beside it tells', () => {
    expect(match('Calcium (mg/L)', { ions: true })).toBe('calcium_hardness mg/L as Ca')
    expect(match('TA (°f)')).toBe('total_alkalinity °fH')
    expect(match('TA (°f)', { french: true })).toBe('note: not_total_alkalinity')
  })

  test.each([
    ['Sample ID', 'sample'],
    ['Proben-Nr.', 'sample'],
    ['Date/Time', 'date'],
    ['Entnahmedatum', 'date'],
    ['Fecha de muestreo', 'date'],
    ['Location', 'place'],
    ['ResultMeasure/MeasureUnitCode', 'unit'],
    ['ResultMeasure.MeasureUnitCode', 'unit'],
    ['Result_ResultDetectionCondition', 'detection'],
    ['determinand.label', 'analyte'],
  ])('%j is the column for the %s', (heading, want) => expect(match(heading)).toBe(want))
})
