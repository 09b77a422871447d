import { backup } from './backup'
import { cases } from './cases'
import { casesPool } from './cases-pool'
import { casesWater } from './cases-water'
import { cautions } from './cautions'
import { cellMenu } from './cell-menu'
import { findWords } from './find'
import { forgetWords } from './forget'
import { functions } from './functions'
import { gridWords } from './grid'
import { headless } from './headless'
import { keeping } from './keeping'
import { notices } from './notices'
import { noticesWorksheets } from './notices-worksheets'
import { offline } from './offline'
import { out } from './out'
import { page } from './page'
import { pagePlan } from './page-plan'
import { pasteWords } from './paste'
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
import { results } from './results'
import { ruleValues } from './rule-values'
import { strengths } from './strengths'
import { study } from './study'
import { units } from './units'

/** All that the page says, in Spanish; key by key what `en/catalogue.ts` says in English. */
export const es: Readonly<Record<string, string>> = {
  ...backup,
  ...casesPool,
  ...casesWater,
  ...cases,
  ...cautions,
  ...cellMenu,
  ...findWords,
  ...forgetWords,
  ...functions,
  ...gridWords,
  ...headless,
  ...keeping,
  ...noticesWorksheets,
  ...notices,
  ...offline,
  ...out,
  ...pagePlan,
  ...page,
  ...pasteWords,
  ...planRules,
  ...planWords,
  ...problemsFunctions,
  ...problemsIntake,
  ...problemsNotebook,
  ...problemsUnits,
  ...problemsWorksheet,
  ...problems,
  ...quantitiesCalcium,
  ...quantitiesChlorine,
  ...quantitiesDilution,
  ...quantitiesGenerator,
  ...quantitiesPhAlkalinity,
  ...quantitiesPlan,
  ...quantitiesPool,
  ...quantitiesSalt,
  ...quantitiesSample,
  ...quantitiesSaturation,
  ...quantitiesStabilizer,
  ...refusals,
  ...results,
  ...ruleValues,
  ...strengths,
  ...study,
  ...units,
}
