import { readFile } from 'node:fs/promises'
import { caseCatalog } from '../planner/cases/caseCatalog'
import type { CaseSource } from '../planner/cases/caseDefinition'
import { isCase, parseCaseText } from '../planner/cases/readCase'
import { SHIPPED_CASES } from '../planner/cases/shippedCases'
import { RULES } from '../planner/rules'
import { type Problem, problem } from '../words/problem'

/** What `--case` names: shipped cases by id, and case files, which are followed in every row. */
export interface AskedCases {
  readonly sources: readonly CaseSource[]
  readonly chosen: readonly string[]
}

/** Reads what `--case` names; or all that is wrong with it, each with file, place and reason. */
export async function readCases(names: readonly string[]): Promise<AskedCases | readonly Problem[]> {
  const sources: CaseSource[] = []
  const chosen: string[] = []
  for (const name of names) {
    if (SHIPPED_CASES.some(({ definition }) => definition.id === name)) {
      chosen.push(name)
      continue
    }
    const text = await readFile(name, 'utf8').catch((error: unknown) =>
      error instanceof Error ? error : new Error(name),
    )
    if (typeof text !== 'string') {
      const shipped = SHIPPED_CASES.map(({ definition }) => definition.id)
      return [problem('usage_case', [], { found: name, accepted: shipped })]
    }
    const definition = parseCaseText(text, name)
    if (!isCase(definition)) return definition
    sources.push({ definition, file: name, shipped: false })
    chosen.push(definition.id)
  }
  if (sources.length > 0) {
    const { refused } = caseCatalog([...SHIPPED_CASES, ...sources], RULES)
    if (refused.length > 0) return refused
  }
  return { sources, chosen }
}
