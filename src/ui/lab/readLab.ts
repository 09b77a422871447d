import type { IntakeClient, Progress } from '../../intake/connect'
import type { Imported } from '../../intake/job'
import type { Known } from '../../intake/known'
import type { RowOutcome } from '../../intake/outcome'
import type { Answers, Understanding } from '../../intake/understanding'
import { isProblem, type Problem } from '../../words/problem'

type Sampled = Extract<RowOutcome, { kind: 'sample' }>

/** A lab file as far as it was understood; its rows only where nothing is left to ask. */
export interface LabReading {
  readonly understanding: Understanding
  /** the first samples as the file has them, to choose from */
  readonly samples: readonly Sampled[]
  /** the account of the whole file */
  readonly imported: Imported | null
}

/** Samples that are shown to choose from. */
export const MOST_SHOWN = 200

/**
 * Reads a lab file with the answers given so far. The whole of it is read in a worker; here only its beginning, as far as
 * the samples that are shown. Whatever the file holds, nothing is thrown and nothing is guessed.
 */
export async function readLab(
  client: IntakeClient,
  file: Blob,
  known: readonly Known[],
  answers: Answers,
  progress: (now: Progress) => void,
  cancel: AbortSignal,
): Promise<LabReading | Problem | null> {
  const understanding = await client.understand(file, known, answers)
  if (isProblem(understanding)) return understanding
  if (understanding.problems.length > 0 || understanding.questions.length > 0) {
    return { understanding, samples: [], imported: null }
  }
  const [imported, samples] = await Promise.all([
    client.import(file, understanding, progress, cancel),
    firstSamples(file, understanding),
  ])
  return isProblem(imported) || imported === null ? imported : { understanding, samples, imported }
}

async function firstSamples(file: Blob, understanding: Understanding): Promise<readonly Sampled[]> {
  const { readSamples } = await import('../../intake/rows')
  const samples: Sampled[] = []
  for await (const outcomes of readSamples(partsOf(file), understanding)) {
    for (const outcome of outcomes) if (outcome.kind === 'sample') samples.push(outcome)
    if (samples.length >= MOST_SHOWN) break
  }
  return samples.slice(0, MOST_SHOWN)
}

async function* partsOf(file: Blob): AsyncGenerator<Uint8Array> {
  const part = 65_536
  for (let at = 0; at < file.size; at += part) yield new Uint8Array(await file.slice(at, at + part).arrayBuffer())
}
