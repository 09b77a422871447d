import { cautions } from './cautions'
import { gridWords } from './grid'
import { notices } from './notices'
import { noticesWorksheets } from './notices-worksheets'
import { page } from './page'
import { problems } from './problems'
import { problemsFunctions } from './problems-functions'
import { problemsNotebook } from './problems-notebook'
import { problemsUnits } from './problems-units'
import { problemsWorksheet } from './problems-worksheet'
import { quantitiesCalcium } from './quantities-calcium'
import { quantitiesChlorine } from './quantities-chlorine'
import { quantitiesDilution } from './quantities-dilution'
import { quantitiesGenerator } from './quantities-generator'
import { quantitiesPhAlkalinity } from './quantities-ph_alkalinity'
import { quantitiesPlan } from './quantities-plan'
import { quantitiesPool } from './quantities-pool'
import { quantitiesSalt } from './quantities-salt'
import { quantitiesSample } from './quantities-sample'
import { quantitiesSaturation } from './quantities-saturation'
import { quantitiesStabilizer } from './quantities-stabilizer'
import { refusals } from './refusals'
import { strengths } from './strengths'
import { units } from './units'

/** What the worksheets say, there from the start; the other parts come with the pages and commands that say them. */
export const start = {
  ...gridWords,
  ...notices,
  ...page,
  ...problems,
  ...problemsFunctions,
  ...problemsNotebook,
  ...problemsUnits,
  ...problemsWorksheet,
  ...quantitiesPlan,
  ...quantitiesPool,
  ...quantitiesSample,
  ...quantitiesSaturation,
  ...cautions,
  ...noticesWorksheets,
  ...quantitiesCalcium,
  ...quantitiesChlorine,
  ...quantitiesDilution,
  ...quantitiesGenerator,
  ...quantitiesPhAlkalinity,
  ...quantitiesSalt,
  ...quantitiesStabilizer,
  ...refusals,
  ...strengths,
  ...units,
} as const
