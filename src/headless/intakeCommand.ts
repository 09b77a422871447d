import './allWords'
import { createReadStream } from 'node:fs'
import { readFile } from 'node:fs/promises'
import type { Readable } from 'node:stream'
import { createLedger } from '../intake/account'
import { contractCsv } from '../intake/contractCsv'
import { knownQuantities } from '../intake/known'
import { answersOf, isMapping, readMapping } from '../intake/mapping'
import { readSamples } from '../intake/rows'
import { HEAD_BYTES, sniff } from '../intake/sniff'
import type { Answers, Understanding } from '../intake/understanding'
import { isProblem, type Problem, problem } from '../words/problem'
import { say, sentence } from '../words/say'
import { SHIPPED } from '../worksheet/shipped'
import { type IntakeOptions, readIntakeOptions } from './intakeOptions'
import { intakeReport } from './intakeReport'

/** Where a command reads and writes; `out` resolves when the reader on the other side has room again. */
export interface Streams {
  readonly input: Readable
  out(text: string): Promise<void>
  complain(text: string): void
}

/**
 * The command `intake`: any laboratory's CSV in, the CSV that `evaluate` takes out, streaming. The last line on standard
 * error is one of JSON.
 * @returns the exit status: 0; 1 when a row was refused; 2 when the file needs an answer or cannot be read, with nothing written
 */
export async function intake(args: readonly string[], streams: Streams): Promise<number> {
  const options = readIntakeOptions(args)
  if (isProblem(options)) return usage([options], streams)
  const given = await givenAnswers(options)
  if (Array.isArray(given)) return usage(given, streams)
  const parts = (options.file === '-' ? streams.input : createReadStream(options.file))[Symbol.asyncIterator]()
  const head = await readHead(parts).catch((error: unknown) => notOpened(options.file, error))
  if (isProblem(head)) return usage([head], streams)
  const understanding = sniff(
    head.bytes,
    knownQuantities(SHIPPED.map(({ definition }) => definition)),
    given as Answers,
    head.whole,
  )
  tellWhatIsUncertain(understanding, streams)
  const open = [...understanding.problems.map(sentence), ...understanding.questions.map(asked)]
  if (open.length > 0) {
    for (const text of open) streams.complain(text)
    streams.complain(intakeReport(understanding, createLedger().account()))
    return 2
  }
  return convert(understanding, head, parts, streams)
}

async function convert(
  understanding: Understanding,
  head: Head,
  parts: AsyncIterator<Uint8Array>,
  streams: Streams,
): Promise<number> {
  const csv = contractCsv(understanding, head.whole)
  const ledger = createLedger()
  await streams.out(csv.header)
  const reading = readSamples(whole(head.bytes, parts), understanding)
  for (;;) {
    const { value, done } = await reading.next()
    if (done === true) {
      ledger.met(value)
      break
    }
    let text = ''
    for (const outcome of value) {
      ledger.add(outcome)
      if (outcome.kind === 'sample') text += csv.line(outcome)
      if (outcome.kind === 'refused') for (const wrong of outcome.problems) streams.complain(sentence(wrong))
    }
    if (text !== '') await streams.out(text)
  }
  const account = ledger.account()
  streams.complain(intakeReport(understanding, account))
  return account.refused > 0 ? 1 : 0
}

/** The answers of a mapping file, under those of the command line. */
async function givenAnswers({ answers, mapping }: IntakeOptions): Promise<Answers | Problem[]> {
  if (mapping === null) return answers
  const text = await readFile(mapping, 'utf8').catch((error: unknown) => notOpened(mapping, error))
  if (isProblem(text)) return [text]
  const read = readMapping(text, mapping)
  return isMapping(read) ? { ...answersOf(read), ...answers } : [...read]
}

interface Head {
  readonly bytes: Uint8Array
  /** the file is no longer than this */
  readonly whole: boolean
}

async function readHead(parts: AsyncIterator<Uint8Array>): Promise<Head> {
  const read: Uint8Array[] = []
  let length = 0
  while (length < HEAD_BYTES) {
    const { value, done } = await parts.next()
    if (done === true) return { bytes: Buffer.concat(read), whole: true }
    read.push(value)
    length += value.length
  }
  return { bytes: Buffer.concat(read), whole: false }
}

async function* whole(head: Uint8Array, parts: AsyncIterator<Uint8Array>): AsyncGenerator<Uint8Array> {
  yield head
  for (let next = await parts.next(); next.done !== true; next = await parts.next()) yield next.value
}

function tellWhatIsUncertain({ doubts, columns, analytes, answers }: Understanding, { complain }: Streams): void {
  for (const doubt of doubts) {
    const whole = doubt.code === 'lab_looks_wrong' && doubt.facts.looks_like !== ''
    const like = whole ? ` ${say('intake.looks_like', doubt.facts)}` : ''
    complain(`${sentence(doubt)}.${like}`)
  }
  const words = [...columns, ...analytes].filter(({ why }) => why.some(({ code }) => code === 'worked_out_word'))
  if (words.length > 0)
    complain(say('headless.intake_words', { count: words.length, names: words.map(({ heading }) => heading) }))
  const headings = new Set([...columns, ...analytes].map(({ heading }) => heading))
  for (const heading of Object.keys(answers.columns ?? {})) {
    if (!headings.has(heading)) complain(sentence(problem('lab_mapping_heading', [], { found: heading })))
  }
}

const FLAG = {
  decimal_mark: '--decimal',
  date_order: '--dates',
  which_quantity: '--mapping',
  which_unit: '--mapping',
} as const

function asked({ code, facts, choices }: Understanding['questions'][number]): string {
  return say('headless.intake_question', { question: say(`intake.question.${code}`, facts), choices, flag: FLAG[code] })
}

function notOpened(file: string, error: unknown): Problem {
  return problem('input_not_opened', [file], { why: error instanceof Error ? error.message : String(error) })
}

function usage(problems: readonly Problem[], { complain }: Streams): 2 {
  for (const wrong of problems) complain(sentence(wrong))
  complain(say('headless.intake_usage'))
  return 2
}
