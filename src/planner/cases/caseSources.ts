import type { Problem } from '../../words/problem'
import type { CaseSource } from './caseDefinition'
import { isCase, readCase } from './readCase'
import { SHIPPED_CASES } from './shippedCases'

export interface CaseSources {
  readonly sources: readonly CaseSource[]
  /** what is wrong with those that are left out */
  readonly refused: readonly Problem[]
}

/** The shipped cases and a notebook's own, by id. */
export function caseSources(own: Readonly<Record<string, unknown>>): CaseSources {
  const sources = [...SHIPPED_CASES]
  const refused: Problem[] = []
  for (const [id, json] of Object.entries(own)) {
    const definition = readCase(json, id)
    if (isCase(definition)) sources.push({ definition, file: id, shipped: false })
    else refused.push(...definition)
  }
  return { sources, refused }
}
