import { functions } from './functions'
import { headless } from './headless'
import { page } from './page'
import { problems } from './problems'
import { problemsNotebook } from './problems-notebook'
import { problemsUnits } from './problems-units'
import { problemsWorksheet } from './problems-worksheet'
import { quantities } from './quantities'
import { units } from './units'

/** Every sentence, label and message in English. Another language is one more folder with the same keys. */
export const en = {
  ...headless,
  ...page,
  ...problems,
  ...problemsNotebook,
  ...problemsUnits,
  ...problemsWorksheet,
  ...quantities,
  ...functions,
  ...units,
} as const
