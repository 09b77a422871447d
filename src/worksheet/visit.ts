import type { Expression } from './formula'

/** Calls `see` for a tree's every node, the outer before the inner, left to right. */
export function visit(node: Expression, see: (node: Expression) => void): void {
  see(node)
  if (node.kind === 'call') for (const argument of node.arguments) visit(argument, see)
  if (node.kind === 'unary') visit(node.operand, see)
  if (node.kind === 'binary') {
    visit(node.left, see)
    visit(node.right, see)
  }
}
