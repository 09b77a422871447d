import { assumptions } from './assumptions'
import { backup } from './backup'
import { carry } from './carry'
import { cases } from './cases'
import { casesPool } from './cases-pool'
import { casesWater } from './cases-water'
import { cellMenu } from './cell-menu'
import { desk } from './desk'
import { findWords } from './find'
import { forgetWords } from './forget'
import { formula } from './formula'
import { functions } from './functions'
import { handout } from './handout'
import { headless } from './headless'
import { keeping } from './keeping'
import { offline } from './offline'
import { out } from './out'
import { pageFunctions } from './page-functions'
import { pageKeys } from './page-keys'
import { pagePlan } from './page-plan'
import { pasteWords } from './paste'
import { planWords } from './plan'
import { planRules } from './plan-rules'
import { problemsIntake } from './problems-intake'
import { ranges } from './ranges'
import { recordWords } from './record'
import { results } from './results'
import { rows } from './rows'
import { ruleValues } from './rule-values'
import { start } from './start'
import { study } from './study'
import { trace } from './trace'

/** Every sentence, label and message in English. Another language is one more folder with the same keys. */
export const en = {
  ...start,
  ...assumptions,
  ...backup,
  ...keeping,
  ...offline,
  ...cases,
  ...casesPool,
  ...casesWater,
  ...cellMenu,
  ...findWords,
  ...pasteWords,
  ...desk,
  ...handout,
  ...pageFunctions,
  ...pageKeys,
  ...pagePlan,
  ...planWords,
  ...planRules,
  ...ruleValues,
  ...problemsIntake,
  ...ranges,
  ...results,
  ...rows,
  ...study,
  ...trace,
  ...carry,
  ...functions,
  ...formula,
  ...headless,
  ...out,
  ...forgetWords,
  ...recordWords,
} as const
