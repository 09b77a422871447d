import { isProblem } from '../words/problem'
import { isScenario } from './nameKey'
import { parseFormula } from './parse'
import { visit } from './visit'

/**
 * A formula's text with other names for quantities, in whichever scenario, and for solves (`water.lsi`). One that cannot
 * be read stays as it is.
 * @param newName the new name of a quantity or a solve; undefined where it keeps its own
 */
export function renamedFormula(text: string, newName: (name: string) => string | undefined): string {
  const formula = parseFormula(text)
  if (isProblem(formula)) return text
  const places: { from: number; to: number; written: string }[] = []
  visit(formula.tree, (node) => {
    if (node.kind !== 'name') return
    const { of, name, from, to } = node
    const ofSolve = of !== null && !isScenario(node)
    const written = newName(ofSolve ? of : name)
    if (written === undefined) return
    if (ofSolve) places.push({ from, to: from + of.length, written })
    else places.push({ from: to - name.length, to, written })
  })
  places.sort((a, b) => a.from - b.from)
  let done = 0
  let anew = ''
  for (const { from, to, written } of places) {
    anew += text.slice(done, from) + written
    done = to
  }
  return anew + text.slice(done)
}
