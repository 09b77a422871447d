/** A parsed formula: one tree for name resolution, unit checking, tracing and highlighting. Places are offsets into the text. */
export type Expression =
  | { readonly kind: 'number'; readonly value: number; readonly from: number; readonly to: number }
  | { readonly kind: 'text'; readonly value: string; readonly from: number; readonly to: number }
  | { readonly kind: 'truth'; readonly value: boolean; readonly from: number; readonly to: number }
  /** `ph`, `baseline.ph`, `'Drain a third'.ph`, `water.lsi` */
  | {
      readonly kind: 'name'
      readonly of: string | null
      readonly quoted: boolean
      readonly name: string
      readonly from: number
      readonly to: number
    }
  | {
      readonly kind: 'call'
      readonly function: string
      readonly arguments: readonly Expression[]
      readonly from: number
      readonly to: number
    }
  | {
      readonly kind: 'unary'
      readonly operator: '-' | '+' | '%'
      readonly operand: Expression
      readonly from: number
      readonly to: number
    }
  | {
      readonly kind: 'binary'
      readonly operator: '+' | '-' | '*' | '/' | '^' | '&' | '=' | '<>' | '<' | '<=' | '>' | '>='
      readonly left: Expression
      readonly right: Expression
      readonly from: number
      readonly to: number
    }

export interface Formula {
  readonly text: string
  readonly tree: Expression
}
