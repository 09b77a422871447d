import { tableIndex } from '../chemistry/tableIndex'
import type { LockedFunction } from './define'

const CODE = 'New York State Sanitary Code, 10 NYCRR 6-1.30'

/** The saturation index by the printed factors. */
export const INDEX_TABLE_FUNCTIONS: readonly LockedFunction[] = [
  {
    name: 'TABLE_INDEX',
    version: 1,
    parameters: [
      { name: 'ph', unit: 'pH', min: 5, max: 10 },
      { name: 'temperature', unit: '°C', min: 0, max: 480 / 9 },
      { name: 'calcium_hardness', unit: 'mg/L as CaCO3', min: 5, max: 1_000 },
      { name: 'total_alkalinity', unit: 'mg/L as CaCO3', min: 5, max: 2_000 },
      { name: 'cyanuric_acid', unit: 'mg/L', min: 0, max: 1_000 },
      { name: 'borate', unit: 'mg/L as B', min: 0, max: 500 },
      { name: 'tds', unit: 'mg/L', min: 0, max: 100_000 },
    ],
    result: { name: 'table_index', unit: '1' },
    source: `Factors: ${CODE}; constants by dissolved solids: Montana Administrative Rules 37.115.1308; cyanurate factors of the operator handbook; borate 0.17, trade press, 2021.`,
    equation: String.raw`SI = pH + TF + CF + AF - 12.1 \;(12.2)`,
    evaluate: (
      ph: number,
      temperature: number,
      calciumHardness: number,
      totalAlkalinity: number,
      cyanuricAcid: number,
      borate: number,
      tds: number,
    ) => tableIndex({ ph, temperature, calciumHardness, totalAlkalinity, cyanuricAcid, borate, tds }),
    checks: [
      {
        args: [7.8, 20, 140, 20, 0, 0, 500],
        expect: -0.8,
        tolerance: 0.1,
        where: `${CODE}, worked example: pH 7.8, 68 °F, calcium 140, alkalinity 20`,
      },
      {
        args: [7.0, 220 / 9, 200, 50, 0, 0, 500],
        expect: -0.9,
        tolerance: 0.1,
        where: 'operator certification course, sample problem: pH 7.0, 76 °F, 200, 50',
      },
      {
        args: [7.6, 260 / 9, 300, 75, 0, 0, 500],
        expect: 0.2,
        tolerance: 0.1,
        where: 'operator certification course, sample problem: pH 7.6, 84 °F, 300, 75',
      },
      {
        args: [8.0, 310 / 9, 400, 150, 0, 0, 500],
        expect: 1.1,
        tolerance: 0.1,
        where: 'operator certification course, sample problem: pH 8.0, 94 °F, 400, 150',
      },
      {
        args: [7.6, 220 / 9, 200, 100, 90, 50, 500],
        expect: -0.21,
        tolerance: 0.1,
        where: 'trade press, 2021: alkalinity 100 less 0.33 × 90 less 0.17 × 50; factors by hand',
      },
    ],
  },
]
