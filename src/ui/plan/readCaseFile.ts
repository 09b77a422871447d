import type { CaseDefinition } from '../../planner/cases/caseDefinition'
import type { RuleChanges } from '../../planner/changeRules'
import type { Problem } from '../../words/problem'

/** A case out of a file, tried out beside the shipped cases and the notebook's own; or all that is wrong with it. */
export async function readCaseFile(
  file: File,
  beside: Readonly<Record<string, unknown>>,
  changes: RuleChanges,
): Promise<CaseDefinition | readonly Problem[]> {
  const [{ parseCaseText, isCase }, { caseSources }, { caseCatalog }, { changeRules }] = await Promise.all([
    import('../../planner/cases/readCase'),
    import('../../planner/cases/caseSources'),
    import('../../planner/cases/caseCatalog'),
    import('../../planner/changeRules'),
  ])
  const read = parseCaseText(await file.text(), file.name)
  if (!isCase(read)) return read
  const { [read.id]: _, ...others } = beside
  const sources = [...caseSources(others).sources, { definition: read, file: file.name, shipped: false }]
  const faults = caseCatalog(sources, changeRules(changes).rules).refused.filter(({ path }) => path[0] === file.name)
  return faults.length === 0 ? read : faults
}
