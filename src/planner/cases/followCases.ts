import { lsiNow } from '../amounts'
import { pass } from '../clock'
import { type Draft, moveTo, numberOf, say, verdict } from '../draft'
import type { Say, Step } from '../step'
import type { CaseStep, Stage } from './caseDefinition'
import { saying, stopsOf, textOf } from './holdingCases'
import { type CaseStanding, told } from './standing'

/** What each part of the plan is about, for what is said of it where a case stops it. */
const ABOUT: Partial<Record<Stage, readonly string[]>> = {
  chlorine: ['free_chlorine'],
  balance: ['ph', 'total_alkalinity'],
  stabilizer: ['cyanuric_acid'],
  calcium: ['calcium_hardness'],
  salt: ['salt'],
  borate: ['borate'],
}

/** Targets and stops of the cases that hold, before anything else of the plan. */
export function enterCases(draft: Draft, cases: readonly CaseStanding[]): void {
  for (const standing of cases) {
    moveTo(draft, standing.sets)
    const reason = `case.${standing.source.definition.id}`
    for (const stage of stopsOf(standing)) {
      draft.refused.set(stage, reason)
      if (stage === 'chlorine' || stage === 'all') draft.noChlorine = true
      if (stage === 'cell') {
        draft.cellRuns = false
        draft.cellOff ||= draft.hasCell
      }
      for (const quantity of ABOUT[stage] ?? []) {
        if (numberOf(draft, `target_${quantity}`) !== undefined)
          verdict(draft, quantity, 'left_out', say('plan.verdict.kept_out', { quantity, rule: reason }))
      }
    }
  }
  draft.measured = draft.column
}

/** The steps of the cases on one side of the plan's own; gates stand before them. */
export function followCases(draft: Draft, cases: readonly CaseStanding[], side: 'before' | 'after'): void {
  for (const standing of cases) {
    const { steps } = standing.source.definition
    if (side === 'before') standGates(draft, standing)
    const here = steps.findIndex((step) => 'plan' in step)
    const end = here < 0 ? steps.length : here
    steps.forEach((step, i) => {
      if ('plan' in step || (side === 'before' ? i >= end : i < end)) return
      const { when } = step
      if (when !== undefined && told(standing, 'steps', i, 'when').truth === 'no') return
      takeStep(draft, standing, step)
      // after the plan's last test nothing is foretold any more
      if (side === 'before') pass(draft, step.wait ?? 0)
      else draft.hour += step.wait ?? 0
    })
  }
}

function standGates(draft: Draft, standing: CaseStanding): void {
  const { gates, id } = standing.source.definition
  for (const [i, gate] of (gates ?? []).entries()) {
    const found = told(standing, 'gates', i, 'when')
    if (found.truth === 'no' || (found.truth === 'unknown' && (gate.stops ?? []).length === 0)) continue
    draft.complete = false
    const asked = found.truth === 'unknown' && found.names.length > 0
    draft.steps.push({
      ...plain(draft, saying(standing.source, gate), id),
      kind: 'gate',
      how: asked ? [say('plan.case.asks', { readings: found.names.map(firstOf) })] : [],
    })
  }
}

/** Of readings that would each do, the first. */
function firstOf(names: string): string {
  return names.split('|')[0] ?? names
}

function takeStep(draft: Draft, standing: CaseStanding, step: CaseStep): void {
  const { id } = standing.source.definition
  const wait = step.wait ?? 0
  const retest = step.retest ?? []
  draft.steps.push({
    ...plain(draft, saying(standing.source, step), id),
    kind: retest.length > 0 ? 'retest' : wait > 0 ? 'wait' : 'do',
    wait,
    retest,
    cautions: (step.cautions ?? []).map(cautionSaid),
    ...(step.pump ? { pump: step.pump } : {}),
    ...(step.cell && draft.hasCell ? { cell: step.cell } : {}),
    shown: (step.tells ?? []).flatMap((name) => standing.shown.get(name) ?? []),
  })
  if (step.cell === 'off' && draft.hasCell) {
    draft.cellRuns = false
    draft.cellOff = true
  }
}

function cautionSaid(caution: string): Say {
  return /^[a-z][a-z0-9_]*$/.test(caution) ? say(`caution.${caution}`) : textOf(caution)
}

function plain(draft: Draft, says: Say, of: string): Step {
  return {
    kind: 'do',
    says,
    case: of,
    how: [],
    cautions: [],
    at: draft.hour,
    wait: 0,
    retest: [],
    rules: [],
    notices: [],
    water: draft.column,
    ...lsiNow(draft),
  }
}
