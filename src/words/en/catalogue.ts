import { cautions } from './cautions'
import { functions } from './functions'
import { headless } from './headless'
import { notices } from './notices'
import { noticesWorksheets } from './notices-worksheets'
import { page } from './page'
import { pagePlan } from './page-plan'
import { planWords } from './plan'
import { planRules } from './plan-rules'
import { problems } from './problems'
import { problemsFunctions } from './problems-functions'
import { problemsIntake } from './problems-intake'
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

/** Every sentence, label and message in English. Another language is one more folder with the same keys. */
export const en = {
  ...headless,
  ...notices,
  ...page,
  ...pagePlan,
  ...planRules,
  ...planWords,
  ...problems,
  ...problemsFunctions,
  ...problemsIntake,
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
  ...functions,
  ...units,
} as const
