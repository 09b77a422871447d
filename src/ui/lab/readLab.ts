import type { IntakeClient, Progress } from '../../intake/connect'
import type { Imported } from '../../intake/job'
import type { Known } from '../../intake/known'
import { answersOf, type Mapping, recognised } from '../../intake/mapping'
import type { Answers, Understanding } from '../../intake/understanding'
import { isProblem, type Problem } from '../../words/problem'

/** A lab file as far as it was understood; its rows only where nothing is left to ask. */
export interface LabReading {
  readonly understanding: Understanding
  /** the kept mapping by whose answers it was understood */
  readonly mapping: Mapping | null
  /** null while something is left open */
  readonly imported: Imported | null
}

/**
 * Reads a lab file, in a worker, with the answers given so far; before any is given, with those of a kept mapping that
 * was made for the same headings. How it was understood is told at once, its rows when all are there. Null when it was cancelled. Whatever the file holds, nothing is thrown or guessed.
 */
export async function readLab(
  client: IntakeClient,
  file: Blob,
  known: readonly Known[],
  answers: Answers,
  kept: readonly Mapping[],
  watch: { readonly understood: (now: LabReading) => void; readonly progress: (now: Progress) => void },
  cancel: AbortSignal,
): Promise<LabReading | Problem | null> {
  const bare = await client.understand(file, known, answers)
  if (isProblem(bare)) return bare
  const mapping = recognised(bare, kept)
  const understanding = mapping ? await client.understand(file, known, joined(answersOf(mapping), answers)) : bare
  if (isProblem(understanding)) return understanding
  const reading = { understanding, mapping, imported: null }
  if (cancel.aborted) return null
  watch.understood(reading)
  if (understanding.problems.length > 0 || understanding.questions.length > 0) return reading
  const imported = await client.import(file, understanding, watch.progress, cancel)
  return isProblem(imported) || imported === null ? imported : { understanding, mapping, imported }
}

/** What was answered now stands before what was kept, column by column. */
function joined(kept: Answers, now: Answers): Answers {
  const columns = { ...kept.columns }
  for (const [heading, answer] of Object.entries(now.columns ?? {}))
    columns[heading] = { ...columns[heading], ...answer }
  return { ...kept, ...now, columns }
}
