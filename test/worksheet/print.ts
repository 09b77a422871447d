import type { Expression } from '../../src/worksheet/formula'

/** OpenFormula text of a tree with every parenthesis that it could need. */
export function print(e: Expression): string {
  switch (e.kind) {
    case 'number':
      return String(e.value)
    case 'text':
      return `"${e.value.replaceAll('"', '""')}"`
    case 'truth':
      return e.value ? 'TRUE' : 'FALSE'
    case 'name':
      if (e.of === null) return e.name
      return e.quoted ? `'${e.of.replaceAll("'", "''")}'.${e.name}` : `${e.of}.${e.name}`
    case 'call':
      return `${e.function}(${e.arguments.map(print).join(';')})`
    case 'unary':
      return e.operator === '%' ? `(${print(e.operand)}%)` : `(${e.operator}${print(e.operand)})`
    case 'binary':
      return `(${print(e.left)}${e.operator}${print(e.right)})`
  }
}
