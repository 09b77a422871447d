import type { Expression } from './formula'

export type NameNode = Extract<Expression, { kind: 'name' }>
type Binary = Extract<Expression, { kind: 'binary' }>

/**
 * The formula text for the engine: fully parenthesised, arguments separated by `;`, every name replaced by
 * `addressOf`, no leading `=`. Only the left operand of operators of one precedence goes without parentheses, so
 * that a long sum does not nest; the engine too reads these from left to right.
 */
export function compile(tree: Expression, addressOf: (name: NameNode) => string): string {
  const write = (e: Expression): string => {
    switch (e.kind) {
      case 'number':
        return String(e.value)
      case 'text':
        return engineText(e.value)
      case 'truth':
        return e.value ? 'TRUE()' : 'FALSE()'
      case 'name':
        return addressOf(e)
      case 'call':
        return `${e.function}(${e.arguments.map((a) => argument(e.function, a)).join(';')})`
      case 'unary':
        return e.operator === '%' ? `(${write(e.operand)}%)` : `(${e.operator}${write(e.operand)})`
      case 'binary':
        return `(${chain(e)})`
    }
  }
  const chain = (e: Binary): string => {
    const left =
      e.left.kind === 'binary' && LEVEL[e.left.operator] === LEVEL[e.operator] ? chain(e.left) : write(e.left)
    return `${left}${e.operator}${write(e.right)}`
  }
  const argument = (called: string, a: Expression): string =>
    a.kind === 'name' && SKIPS_TEXT.has(called) ? `(${write(a)}+0)` : write(a)
  return write(tree)
}

const LEVEL: Readonly<Record<Binary['operator'], number>> = {
  '^': 5,
  '*': 4,
  '/': 4,
  '+': 3,
  '-': 3,
  '&': 2,
  '=': 1,
  '<>': 1,
  '<': 1,
  '<=': 1,
  '>': 1,
  '>=': 1,
}

/** These leave out a referenced cell that holds text, so MAX(shape; 3) would be 3; plus zero it is an error instead. */
const SKIPS_TEXT = new Set([
  ...['SUM', 'PRODUCT', 'SUMSQ', 'AVERAGE', 'MIN', 'MAX'],
  ...['STDEV', 'STDEVP', 'VAR', 'VARP'],
])

/** The engine has no way to write a quotation mark or a last backslash inside a text, so these are joined in. */
function engineText(value: string): string {
  const parts: string[] = []
  let plain = ''
  for (const c of value) {
    if (c === '"' || c === '\\') {
      if (plain !== '') parts.push(`"${plain}"`)
      parts.push(`CHAR(${c.charCodeAt(0)})`)
      plain = ''
    } else plain += c
  }
  if (plain !== '' || parts.length === 0) parts.push(`"${plain}"`)
  return parts.length === 1 ? parts.join('') : `(${parts.join('&')})`
}
