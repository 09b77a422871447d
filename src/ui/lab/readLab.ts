import type { Account } from '../../intake/account'
import { createLedger } from '../../intake/account'
import type { Known } from '../../intake/known'
import type { RowOutcome } from '../../intake/outcome'
import { readSamples } from '../../intake/rows'
import { HEAD_BYTES, sniff } from '../../intake/sniff'
import type { Answers, Understanding } from '../../intake/understanding'

/** A lab file as far as it was understood; its rows only where nothing is left to ask. */
export interface LabReading {
  readonly understanding: Understanding
  readonly outcomes: readonly RowOutcome[]
  readonly account: Account | null
}

/** Reads a lab file with the answers given so far. Whatever the file holds, nothing is thrown and nothing is guessed. */
export async function readLab(file: Blob, known: readonly Known[], answers: Answers): Promise<LabReading> {
  const head = new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer())
  const understanding = sniff(head, known, answers, file.size <= HEAD_BYTES)
  if (understanding.problems.length > 0 || understanding.questions.length > 0) {
    return { understanding, outcomes: [], account: null }
  }
  const outcomes: RowOutcome[] = []
  const ledger = createLedger()
  const reading = readSamples(partsOf(file), understanding)
  for (;;) {
    const step = await reading.next()
    if (step.done) {
      ledger.met(step.value)
      break
    }
    for (const outcome of step.value) {
      ledger.add(outcome)
      outcomes.push(outcome)
    }
  }
  return { understanding, outcomes, account: ledger.account() }
}

async function* partsOf(file: Blob): AsyncGenerator<Uint8Array> {
  const reader = file.stream().getReader()
  for (;;) {
    const { done, value } = await reader.read()
    if (done) return
    yield value
  }
}
