/** A Lezer grammar, compiled to its parser by the build. */
declare module '*.grammar' {
  import type { LRParser } from '@lezer/lr'
  export const parser: LRParser
}
