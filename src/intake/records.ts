import Papa from 'papaparse'

/** One record of a CSV file. A quoted field may hold line ends, so a record can be several lines of text. */
export interface CsvRecord {
  /** counted as a spreadsheet shows rows: the first is 1, blank ones count, a `sep=` line does not */
  readonly row: number
  readonly cells: readonly string[]
  /** its quotes do not pair up: `cells` holds the line of text as it stands */
  readonly broken?: true
}

export interface CsvReader {
  push(text: string): CsvRecord[]
  end(): CsvRecord[]
}

/** A quoted field longer than this was never closed. A spreadsheet cell holds 32 767 characters. */
const LONGEST_FIELD = 65_536
/** A line longer than this is no table. */
const LONGEST_LINE = 4_000_000

const SEP_LINE = /^sep=([,;\t|^~:])[ \t]*\n/i

/** The delimiter that a first line `sep=;` declares, as spreadsheets write it. */
export function declaredDelimiter(text: string): string | null {
  return (
    SEP_LINE.exec(
      text
        .slice(0, 16)
        .replace(/^\uFEFF/, '')
        .replace(/\r\n?/g, '\n'),
    )?.[1] ?? null
  )
}

/**
 * Splits text into records piece by piece (RFC 4180, with any delimiter and LF, CRLF or CR). A record whose quotes do
 * not pair up gives only its first line away as broken; reading goes on with the next line, so that one stray quote
 * cannot swallow what follows. Memory holds one unfinished record.
 */
export function createCsvReader(delimiter: string): CsvReader {
  const parser = new Papa.Parser({ delimiter, newline: '\n' })
  let rest = ''
  let heldReturn = false
  let row = 0
  let started = false
  let spaced: RegExp | null = null

  function records(parsed: Parsed): CsvRecord[] {
    return parsed.data.map((cells) => ({ row: ++row, cells }))
  }

  /** The careful way, for text in which quotes do not pair up. */
  function oneByOne(text: string, last: boolean): CsvRecord[] {
    const out: CsvRecord[] = []
    let at = 0
    while (at < text.length) {
      const end = recordEnd(text, at, delimiter)
      if (end === 'unfinished' && !last) break
      if (typeof end === 'number') {
        out.push(...records(parser.parse(text.slice(at, end), 0, true)))
        at = end
      } else {
        const lineEnd = text.indexOf('\n', at)
        if (lineEnd === -1 && !last) break
        const stop = lineEnd === -1 ? text.length : lineEnd
        out.push({ row: ++row, cells: [text.slice(at, stop)], broken: true })
        at = stop + 1
      }
    }
    rest = text.slice(at)
    return out
  }

  function take(text: string): CsvRecord[] {
    const parsed: Parsed = parser.parse(text, 0, true)
    if (parsed.errors.length > 0) return oneByOne(text, false)
    rest = text.slice(parsed.meta.cursor)
    const whole = records(parsed)
    return rest.length > LONGEST_FIELD && rest.includes('\n') ? whole.concat(oneByOne(rest, false)) : whole
  }

  function tidied(text: string): string {
    return spaced === null ? text : text.replace(spaced, '$1"')
  }

  /** Every line end becomes LF; a CR at the very end may be half of a CRLF and waits. */
  function lines(text: string): string {
    const all = heldReturn ? `\r${text}` : text
    heldReturn = all.endsWith('\r')
    const whole = heldReturn ? all.slice(0, -1) : all
    return whole.includes('\r') ? whole.replace(/\r\n?/g, '\n') : whole
  }

  return {
    push(text) {
      let all = rest + lines(text)
      if (!started) {
        if (!all.includes('\n') && all.length < LONGEST_LINE) {
          rest = all
          return []
        }
        started = true
        all = opened(all)
        spaced = spacesBeforeQuotes(all, delimiter)
      }
      if (all.length > LONGEST_LINE && !all.includes('\n')) {
        rest = ''
        return [{ row: ++row, cells: [all.slice(0, 200)], broken: true }]
      }
      return take(tidied(all))
    },
    end() {
      let all = heldReturn ? `${rest}\n` : rest
      if (!started) {
        all = opened(all)
        spaced = spacesBeforeQuotes(all, delimiter)
      }
      all = tidied(all)
      if (all === '') return []
      const out = take(all.endsWith('\n') ? all : `${all}\n`)
      const left = rest
      return left === '' ? out : out.concat(oneByOne(left, true))
    },
  }
}

/** Without what stands before the first record: a byte order mark, a line that declares the delimiter. */
function opened(text: string): string {
  return text.replace(/^\uFEFF/, '').replace(SEP_LINE, '')
}

/** Where the first line has spaces between a delimiter and a quote, they are no part of the fields anywhere in the file. */
function spacesBeforeQuotes(text: string, delimiter: string): RegExp | null {
  const mark = `[\\${delimiter}]`
  const [line = ''] = text.split('\n', 1)
  return new RegExp(`^[^"]*${mark} +"`).test(line) ? new RegExp(`(${mark}) +"`, 'g') : null
}

/** The part of Papa's result that we read; its own types say `any`. */
interface Parsed {
  readonly data: readonly string[][]
  readonly errors: readonly unknown[]
  readonly meta: { readonly cursor: number }
}

/** Where the record that starts at `at` ends (after its line end), or why there is no such place. */
function recordEnd(text: string, at: number, delimiter: string): number | 'broken' | 'unfinished' {
  let i = at
  for (;;) {
    if (text[i] === '"') {
      const close = closingQuote(text, i + 1)
      if (close === -1) return text.length - i > LONGEST_FIELD ? 'broken' : 'unfinished'
      if (close - i > LONGEST_FIELD) return 'broken'
      i = close + 1
      while (text[i] === ' ' || (text[i] === '\t' && delimiter !== '\t')) i++
      if (i >= text.length) return 'unfinished'
      if (text[i] === '\n') return i + 1
      if (text[i] !== delimiter) return 'broken'
      i++
    } else {
      const lineEnd = text.indexOf('\n', i)
      if (lineEnd === -1) return 'unfinished'
      const next = text.slice(i, lineEnd).indexOf(delimiter)
      if (next === -1) return lineEnd + 1
      i += next + 1
    }
  }
}

/** The quote that closes a field whose text starts at `at`; a doubled quote is part of the text. */
function closingQuote(text: string, at: number): number {
  let i = text.indexOf('"', at)
  while (i !== -1 && text[i + 1] === '"') i = text.indexOf('"', i + 2)
  return i
}
