import { readCell } from './numbers'
import { spelling } from './spelling'

/** What a qualifier or a detection condition beside a result says of it. */
export type Qualified = 'plain' | 'under' | 'over' | 'estimated' | 'missing' | 'unknown'

/**
 * Letters that keep the value (US Geological Survey remark codes A, E, S and R; J and E of laboratories) and those that say
 * "there, but too little to measure" (M, N). R means "rejected" to other laboratories, so it counts in portal files only.
 */
const LETTERS: ReadonlyMap<string, Qualified> = new Map(
  Object.entries({
    plain: ['', '=', '=='],
    under: ['<', '<=', '≤', 'U', 'UJ', 'M', 'N'],
    over: ['>', '>=', '≥'],
    estimated: ['J', 'E', '~', 'A', 'S'],
  } satisfies Partial<Record<Qualified, string[]>>).flatMap(([says, letters]) =>
    letters.map((letter) => [letter, says as Qualified]),
  ),
)

/** Reads the text of a qualifier column. One that is not known is no reason to take the number as it stands. */
export function qualified(text: string, portal: boolean): Qualified {
  const trimmed = text.trim()
  const letter = LETTERS.get(trimmed.toUpperCase())
  if (letter !== undefined) return letter
  if (trimmed.toUpperCase() === 'R') return portal ? 'estimated' : 'unknown'
  const word = readCell(trimmed, '.')
  if (word.kind === 'missing') return /^[-–—.]+$/.test(trimmed) ? 'plain' : 'missing'
  if (word.kind === 'censored' && word.limit === null) return word.sign === '<' ? 'under' : 'over'
  return /^(?:ok|valid|accepted|final|detected|y)$/i.test(trimmed) ? 'plain' : 'unknown'
}

const YES = /^(?:true|yes|y|x|1|ja|oui|si|sí)$/i
const NO = /^(?:false|no|n|0|nein|non)$/i

/** Reads the text of a column that says whether something was detected; some say it with yes and no. */
export function detected(text: string, heading: string): Qualified {
  const answer = text.trim()
  const [yes, no] = [YES.test(answer), NO.test(answer)]
  if (!yes && !no) return qualified(text, true)
  const negated = /^n(?:on?|d)/.test(spelling(heading))
  return yes === negated ? 'under' : 'plain'
}

/** The text of a result with what stands beside it: `0.05` and `U` are `<0.05`; nothing and `ND` take the limit's column. */
export function resultText(result: string, says: Qualified, limit: string): string {
  const bare = result.trim()
  const signed = /^[<>≤≥]/.test(bare)
  if (says === 'under' || says === 'over') {
    const sign = says === 'under' ? '<' : '>'
    if (signed) return bare
    return bare !== '' && readCell(bare, null).kind !== 'censored'
      ? `${sign}${bare}`
      : limit === ''
        ? says === 'under'
          ? 'ND'
          : 'OR'
        : `${sign}${limit}`
  }
  const word = readCell(bare, null)
  if (word.kind === 'censored' && word.limit === null && word.sign === '<' && limit !== '') return `<${limit}`
  return says === 'estimated' && bare !== '' && !signed ? `~${bare}` : bare
}
