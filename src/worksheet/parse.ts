import type { SyntaxNode, Tree } from '@lezer/common'
import { type Problem, problem } from '../words/problem'
import type { Expression, Formula } from './formula'
import { parser } from './formula.grammar'

/** Longest text of a formula, in UTF-16 code units. */
export const MOST_CHARACTERS = 4_000
/** Parentheses, calls, signs and operators inside one another; the engine's own stack ends near 120. */
export const MOST_DEPTH = 32
/** Numbers, names, calls and operators in one formula. */
export const MOST_NODES = 500

/**
 * Reads an OpenFormula expression with quantity names. A leading `=` is accepted; places are offsets into `text` as
 * given. What the names and functions mean is not asked here.
 * @param path where the formula stands, for the sentence of a problem
 * @returns the tree, or the first thing that is wrong: codes `formula_*`, with `at` counted from 1
 */
export function parseFormula(text: string, path: Problem['path'] = []): Formula | Problem {
  if (text.length > MOST_CHARACTERS) {
    return problem('formula_too_long', path, { found: text.length, most: MOST_CHARACTERS })
  }
  const body = withoutEqualsSign(text)
  const tree = parser.parse(body)
  const wrong = survey(tree, body, path)
  const root = tree.topNode.firstChild
  if (wrong) return wrong
  if (!root) return problem('formula_empty', path)
  return { text, tree: expression(root, body) }
}

/** The sign is blanked rather than cut, so that places stay offsets into what was typed. */
function withoutEqualsSign(text: string): string {
  const start = text.length - text.trimStart().length
  return text[start] === '=' ? `${text.slice(0, start)} ${text.slice(start + 1)}` : text
}

/** One walk without recursion over a tree of any depth: size, depth, the first error, numbers too large to hold. */
function survey(tree: Tree, text: string, path: Problem['path']): Problem | null {
  let nodes = 0
  let depth = 0
  let deepest = 0
  let errorAt = -1
  let tooLarge: Problem | null = null
  const open: { at: number; call: boolean }[] = []
  tree.iterate({
    enter(at) {
      if (at.type.isError && errorAt < 0) errorAt = at.from
      if (EXPRESSIONS.has(at.name)) nodes += 1
      if (nests(at.node)) {
        depth += 1
        deepest = Math.max(deepest, depth)
      }
      if (errorAt >= 0) return
      if (at.name === 'Open') open.push({ at: at.from, call: at.node.parent?.name === 'Call' })
      if (at.name === 'Close') open.pop()
      if (at.name === 'Number' && !Number.isFinite(Number(text.slice(at.from, at.to)))) {
        tooLarge ??= problem('formula_number_too_large', path, { found: text.slice(at.from, at.to).slice(0, 24) })
      }
    },
    leave(at) {
      if (nests(at.node)) depth -= 1
    },
  })
  if (nodes > MOST_NODES) return problem('formula_too_large', path, { most: MOST_NODES })
  if (deepest > MOST_DEPTH) return problem('formula_too_deep', path, { most: MOST_DEPTH })
  return errorAt < 0 ? tooLarge : syntaxProblem(text, errorAt, open.at(-1), path)
}

const EXPRESSIONS = new Set(['Number', 'Text', 'Name', 'Call', 'Parenthesis', 'Sign', 'Percent', 'Binary'])
const NESTING = new Set(['Call', 'Parenthesis', 'Sign', 'Percent', 'Binary'])

/** `a + b + c + d` is one level, not three: the left operand of operators of one precedence stays on its level. */
function nests(node: SyntaxNode): boolean {
  if (!NESTING.has(node.name)) return false
  if (node.name !== 'Binary') return true
  const outer = node.parent
  return !(outer?.name === 'Binary' && outer.from === node.from && operator(outer)?.name === operator(node)?.name)
}

function operator(binary: SyntaxNode): SyntaxNode | null {
  return binary.firstChild?.nextSibling ?? null
}

function syntaxProblem(
  text: string,
  errorAt: number,
  open: { readonly at: number; readonly call: boolean } | undefined,
  path: Problem['path'],
): Problem {
  const at = errorAt + (text.slice(errorAt).length - text.slice(errorAt).trimStart().length)
  const before = text.slice(0, at).trimEnd().at(-1)
  if (before === undefined && at >= text.length) return problem('formula_empty', path)
  const wantsOperand = before === undefined || '(;+-*/^&=<>'.includes(before)
  if (at >= text.length) {
    return wantsOperand
      ? problem('formula_ends_early', path, { after: before ?? '' })
      : problem('formula_not_closed', path, { at: (open?.at ?? 0) + 1 })
  }
  const facts = { at: at + 1, found: wordAt(text, at) }
  if (text[at] === ',') return problem('formula_comma', path, facts)
  if (text[at] === '"') return problem('formula_text_not_closed', path, facts)
  if (text[at] === "'") return problem('formula_scenario_name', path, facts)
  if (wantsOperand) return problem('formula_wants_operand', path, facts)
  if (!open) return problem('formula_wants_operator', path, facts)
  return problem(open.call ? 'formula_wants_argument_end' : 'formula_wants_close', path, facts)
}

/** The word, number or single sign that starts at a place. */
function wordAt(text: string, at: number): string {
  const first = String.fromCodePoint(text.codePointAt(at) ?? 0)
  let end = at
  while (end < text.length && end - at < 24 && isWordCharacter(text.charAt(end))) end += 1
  return end > at ? text.slice(at, end) : first
}

function isWordCharacter(c: string): boolean {
  return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || c === '_'
}

/** Recursion is safe here: the survey has refused more than 500 nodes. */
function expression(node: SyntaxNode, text: string): Expression {
  const { from, to } = node
  const written = text.slice(from, to)
  const operands = childrenOf(node).filter((child) => EXPRESSIONS.has(child.name))
  switch (node.name) {
    case 'Number':
      return { kind: 'number', value: Number(written), from, to }
    case 'Text':
      return { kind: 'text', value: written.slice(1, -1).replaceAll('""', '"'), from, to }
    case 'Name':
      return nameOrTruth(written, from, to)
    case 'Call': {
      const called = text.slice(from, node.firstChild?.to).toUpperCase()
      const list = operands.map((operand) => expression(operand, text))
      if (list.length === 0 && isTruth(called)) return { kind: 'truth', value: called === 'TRUE', from, to }
      return { kind: 'call', function: called, arguments: list, from, to }
    }
    case 'Parenthesis':
      return expression(firstOf(operands, node), text)
    case 'Sign':
      return { kind: 'unary', operator: text[from] === '-' ? '-' : '+', ...operandOf(operands, node, text), from, to }
    case 'Percent':
      return { kind: 'unary', operator: '%', ...operandOf(operands, node, text), from, to }
    default: {
      const sign = operator(node)
      const symbol = text.slice(sign?.from, sign?.to) as Extract<Expression, { kind: 'binary' }>['operator']
      const left = expression(firstOf(operands, node), text)
      const right = expression(firstOf(operands.slice(1), node), text)
      return { kind: 'binary', operator: symbol, left, right, from, to }
    }
  }
}

function childrenOf(node: SyntaxNode): SyntaxNode[] {
  const children: SyntaxNode[] = []
  for (let child = node.firstChild; child; child = child.nextSibling) children.push(child)
  return children
}

function operandOf(operands: readonly SyntaxNode[], node: SyntaxNode, text: string): { operand: Expression } {
  return { operand: expression(firstOf(operands, node), text) }
}

/** The grammar gives these nodes their operands; a tree with errors never comes here. */
function firstOf(operands: readonly SyntaxNode[], node: SyntaxNode): SyntaxNode {
  const first = operands[0]
  if (!first) throw new RangeError(`a ${node.name} without an operand at ${node.from}`)
  return first
}

function nameOrTruth(written: string, from: number, to: number): Expression {
  if (isTruth(written.toUpperCase())) {
    return { kind: 'truth', value: written.toUpperCase() === 'TRUE', from, to }
  }
  const point = written.lastIndexOf('.')
  if (point < 0) return { kind: 'name', of: null, quoted: false, name: written, from, to }
  const name = written.slice(point + 1)
  const of = written.slice(0, point)
  return of.startsWith("'")
    ? { kind: 'name', of: of.slice(1, -1).replaceAll("''", "'"), quoted: true, name, from, to }
    : { kind: 'name', of, quoted: false, name, from, to }
}

function isTruth(word: string): boolean {
  return word === 'TRUE' || word === 'FALSE'
}
