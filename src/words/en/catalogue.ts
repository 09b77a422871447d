import { cases } from './cases'
import { casesPool } from './cases-pool'
import { casesWater } from './cases-water'
import { functions } from './functions'
import { headless } from './headless'
import { keeping } from './keeping'
import { offline } from './offline'
import { out } from './out'
import { pagePlan } from './page-plan'
import { planWords } from './plan'
import { planRules } from './plan-rules'
import { problemsIntake } from './problems-intake'
import { results } from './results'
import { start } from './start'
import { study } from './study'

/** Every sentence, label and message in English. Another language is one more folder with the same keys. */
export const en = {
  ...start,
  ...keeping,
  ...offline,
  ...cases,
  ...casesPool,
  ...casesWater,
  ...pagePlan,
  ...planWords,
  ...planRules,
  ...problemsIntake,
  ...results,
  ...study,
  ...functions,
  ...headless,
  ...out,
} as const
