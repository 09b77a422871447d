import { assumptions } from './assumptions'
import { backup } from './backup'
import { carry } from './carry'
import { cases } from './cases'
import { casesPool } from './cases-pool'
import { casesWater } from './cases-water'
import { cautions } from './cautions'
import { cellMenu } from './cell-menu'
import { desk } from './desk'
import { findWords } from './find'
import { forgetWords } from './forget'
import { formula } from './formula'
import { functions } from './functions'
import { gridWords } from './grid'
import { handout } from './handout'
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
import { ranges } from './ranges'
import { recordWords } from './record'
import { refusals } from './refusals'
import { results } from './results'
import { rows } from './rows'
import { ruleValues } from './rule-values'
import { strengths } from './strengths'
import { study } from './study'
import { trace } from './trace'
import { units } from './units'

/** All that the page says, in Spanish; key by key what `en/catalogue.ts` says in English. */
export const es: Readonly<Record<string, string>> = {
  ...assumptions,
  ...backup,
  ...carry,
  ...casesPool,
  ...casesWater,
  ...cases,
  ...cautions,
  ...cellMenu,
  ...desk,
  ...findWords,
  ...forgetWords,
  ...formula,
  ...functions,
  ...gridWords,
  ...handout,
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
  ...ranges,
  ...recordWords,
  ...refusals,
  ...results,
  ...rows,
  ...ruleValues,
  ...strengths,
  ...study,
  ...trace,
  ...units,
}
