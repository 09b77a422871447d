import { type DecimalMark, readNumber, type WrittenNumber } from '../units/readNumber'

/** What a cell of a quantity's column holds. `unit` is the text after the number, empty where there is none. */
export type CellReading =
  | {
      readonly kind: 'value'
      readonly value: number
      /** the figures as written, with a point for decimals and without grouping marks */
      readonly figures: string
      readonly unit: string
      readonly estimated: boolean
    }
  /** under or over what the method can tell; the limit is null where the cell has only a word for it */
  | { readonly kind: 'censored'; readonly sign: '<' | '>'; readonly limit: number | null; readonly unit: string }
  /** not measured: never zero */
  | { readonly kind: 'missing' }
  | { readonly kind: 'unreadable'; readonly why: 'not_a_number' | 'ambiguous_number' }

const MISSING: CellReading = { kind: 'missing' }
const NOT_A_NUMBER: CellReading = { kind: 'unreadable', why: 'not_a_number' }
const AMBIGUOUS: CellReading = { kind: 'unreadable', why: 'ambiguous_number' }

const keys = (text: string) => new Set(text.split(' '))

/** Words for "not measured", as laboratories write them (n.b. = nicht bestimmt, s/d = sin dato), without dots and spaces. */
const NOT_MEASURED = keys(
  'na n/a #n/a nan null none nb ns nt nm nr s/d sd ka pending nottested nottaken notmeasured notanalysed notanalyzed notreported *notreported notdetermined notdone nichtbestimmt nichtgemessen nonmesuré nonmesure nonanalysé nondéterminé nomedido noanalizado',
)
/** Words for "below the limit", which they do not give (n.n. = nicht nachweisbar; BG, LQ, SEUIL: the limit by other names). */
const NOT_DETECTED = keys(
  'nd notdetected nondetect non-detect non-detected *non-detect undetected bdl bld bql brl bmdl <lod <loq <mdl <dl <rl <rdl <ql <pql <mrl <lq <ld <lc <bg <ng <nwg <seuil u uj nn nichtnachweisbar nichtnachgewiesen unterbg ubg unternwg nondétecté nondetecte nodetectado belowdetection belowdetectionlimit belowlimit presentbelowquantificationlimit *present<ql detectednotquantified trace traces tr spuren trazas low lo underrange',
)
const OVER_RANGE = keys('tntc or over overrange hi high >ql >loq presentabovequantificationlimit *present>ql')

const UNDER = /^(?:<|≤|⩽|less than|below|under|kleiner(?: als)?|unter|inf(?:[ée]rieur)?\.? ?[àa]?|menor que)\s*=?\s*/i
const OVER =
  /^(?:>|≥|⩾|greater than|more than|above|größer(?: als)?|über|sup(?:[ée]rieur)?\.? ?[àa]?|mayor que)\s*=?\s*/i
/** Strips and drop tests end so: `5+` is five or more. */
const AND_MORE = /^(\d[\d.,]*)\s*\+(?=\s*(?:[\p{L}%]|$))/u
const ABOUT = /^(?:~|≈|ca\.?|approx\.?|about|circa|env(?:iron)?\.?|aprox\.?)\s*/i

/** A number, then anything: a unit, a laboratory's letter. Grouping marks are looked at afterwards. */
const NUMBER = /^([+\-−–]?(?:\d[\d.,'’\s]*|[.,]\d+)(?:[eE][+-]?\d+)?(?![\d.,]))\s*(.*)$/su
const UNIT = /^[\p{L}°º%‰[(]/u
/** A reading with its unit and remark is shorter. */
const LONGEST = 80
const PLAIN = /^-?\d+(?:\.\d+)?$/
const PLAIN_COMMA = /^-?\d+(?:,\d+)?$/

/**
 * Reads one cell. `decimal` is the file's mark, or null while nothing has told: then a number that speaks for itself
 * is read, and one like `1,250` is ambiguous. It never guesses, never takes a word for zero, never throws.
 */
export function readCell(cell: string, decimal: DecimalMark | null): CellReading {
  const short = cell.length <= LONGEST
  if (short && (decimal === '.' ? PLAIN.test(cell) : decimal === ',' && PLAIN_COMMA.test(cell))) {
    const figures = decimal === ',' ? cell.replace(',', '.') : cell
    return { kind: 'value', value: Number(figures), figures, unit: '', estimated: false }
  }
  const text = cell.trim()
  const worded = word(text)
  if (worded !== null) return worded
  if (text.length > LONGEST) return NOT_A_NUMBER
  const under = UNDER.exec(text)
  if (under !== null) return censored('<', text.slice(under[0].length), decimal)
  const over = OVER.exec(text)
  if (over !== null) return censored('>', text.slice(over[0].length), decimal)
  const more = AND_MORE.exec(text)
  if (more !== null) return censored('>', `${more[1]}${text.slice(more[0].length)}`, decimal)
  const about = ABOUT.exec(text)
  return number(about === null ? text : text.slice(about[0].length), decimal, about !== null)
}

/**
 * Which decimal mark a number shows: `7.24` a point, `7,24` and `1.250,5` a comma; `1,250` and `1.250` can be both,
 * and say 'ambiguous'; null where there is no mark, or a slip such as `7..2`.
 */
export function decimalMark(number: string): DecimalMark | 'ambiguous' | null {
  const digits = number.replace(/^[+\-−–]/, '')
  const comma = digits.lastIndexOf(',')
  const point = digits.lastIndexOf('.')
  if (comma === -1 && point === -1) return null
  if (comma !== -1 && point !== -1) return comma > point ? ',' : '.'
  const mark = comma === -1 ? '.' : ','
  const at = Math.max(comma, point)
  if (digits.indexOf(mark) !== at) {
    const grouped = /^\d{1,3}(?:[.,]\d{3})+$/.test(digits)
    return grouped ? (mark === '.' ? ',' : '.') : null
  }
  const groups = /^[1-9]\d{0,2}$/.test(digits.slice(0, at)) && /^\d{3}$/.test(digits.slice(at + 1))
  return groups ? 'ambiguous' : mark
}

/** The number inside a cell as it is written there, without sign of a limit, unit or remark; null where there is none. */
export function numberIn(cell: string): string | null {
  if (cell.length > LONGEST) return null
  const text = cell.trim().replace(UNDER, '').replace(OVER, '').replace(ABOUT, '')
  const found = NUMBER.exec(text)
  return found === null || !understood(found[2] ?? '') ? null : (found[1] ?? '').trim()
}

/** Reads a number with its grouping marks; null when it is none, 'ambiguous' when the mark is not known and not evident. */
function parseNumber(written: string, decimal: DecimalMark | null): WrittenNumber | 'ambiguous' | null {
  const evident = decimal ?? decimalMark(written.trim()) ?? '.'
  return evident === 'ambiguous' ? evident : readNumber(written, evident)
}

function word(text: string): CellReading | null {
  if (/^[-–—_.\s]*$/.test(text)) return MISSING
  if (text.length > 40) return null
  const key = text.toLowerCase().replace(/[\s.]/g, '')
  if (NOT_MEASURED.has(key)) return MISSING
  if (NOT_DETECTED.has(key)) return { kind: 'censored', sign: '<', limit: null, unit: '' }
  return OVER_RANGE.has(key) ? { kind: 'censored', sign: '>', limit: null, unit: '' } : null
}

/** Letters of laboratories: U not detected (the number is the limit), J and E estimated, UJ both. */
function number(text: string, decimal: DecimalMark | null, estimated: boolean): CellReading {
  const before = /^(UJ|[UJE])\s+(?=\d)/.exec(text)
  const found = NUMBER.exec(before === null ? text : text.slice(before[0].length))
  if (found === null) return NOT_A_NUMBER
  const after = (found[2] ?? '').trim()
  const letter = before?.[1] ?? (/^(?:UJ|[UJE])$/.test(after) ? after : '')
  const unit = before === null && letter !== '' ? '' : after
  if (!understood(unit)) return NOT_A_NUMBER
  const parsed = parseNumber(found[1] ?? '', decimal)
  if (parsed === 'ambiguous') return AMBIGUOUS
  if (parsed === null) return NOT_A_NUMBER
  if (letter.startsWith('U')) return { kind: 'censored', sign: '<', limit: parsed.value, unit }
  return { kind: 'value', ...parsed, unit, estimated: estimated || letter !== '' }
}

function censored(sign: '<' | '>', rest: string, decimal: DecimalMark | null): CellReading {
  const limit = number(rest.trim(), decimal, false)
  if (limit.kind === 'value') return { kind: 'censored', sign, limit: limit.value, unit: limit.unit }
  return limit.kind === 'censored' ? limit : limit.kind === 'missing' ? NOT_A_NUMBER : limit
}

function understood(unit: string): boolean {
  return unit === '' || (unit.length <= 30 && UNIT.test(unit))
}
