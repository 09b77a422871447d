import type { Column } from '../bench'
import { say } from '../draft'
import type { PlanCase, Say } from '../step'
import type { CaseSource, Stage } from './caseDefinition'
import { type CaseStanding, told } from './standing'

/**
 * The cases that a plan follows: those that the reader chose, and those that stop something as soon as their condition is true,
 * for safety asks nobody.
 */
export function holdingCases(all: readonly CaseStanding[], chosen: readonly string[]): readonly CaseStanding[] {
  return all.filter((standing) => {
    const { id, stops, closes } = standing.source.definition
    const byItself = (stops ?? []).length > 0 || closes === true
    return chosen.includes(id) || (byItself && told(standing, 'when').truth === 'yes')
  })
}

/** What a case stops in this water: its own stops, and those of each gate that stands or cannot be told. */
export function stopsOf(standing: CaseStanding): ReadonlySet<Stage> {
  const { stops, gates } = standing.source.definition
  const standingGates = (gates ?? []).flatMap((gate, i) =>
    told(standing, 'gates', i, 'when').truth === 'no' ? [] : (gate.stops ?? []),
  )
  return new Set([...(stops ?? []), ...standingGates])
}

/** What the plan says of a case as a whole. */
export function planCase(standing: CaseStanding, column: Column): PlanCase {
  const { source } = standing
  const { id, done, forbids, sources, asks } = source.definition
  return {
    id,
    label: source.definition.label === undefined ? say(`case.${id}.label`) : textOf(source.definition.label),
    done: (done ?? []).map((end, i) => ({ says: saying(source, end), told: told(standing, 'done', i, 'when') })),
    forbids: (forbids ?? []).map((one) => saying(source, one)),
    sources,
    asks: (asks ?? []).filter((name) => !column.has(name)),
  }
}

/** A sentence of a case: its own, or that of the catalogue. */
export function saying({ definition }: CaseSource, { id, says }: { id: string; says?: string | undefined }): Say {
  return says === undefined ? say(`case.${definition.id}.${id}`) : textOf(says)
}

export function textOf(text: string): Say {
  return say('plan.case.text', { text })
}
