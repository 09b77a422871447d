import { spelling } from './spelling'
import type { Column } from './understanding'

/** Columns of a wide file that say more of the readings of another: its qualifier, its reporting limit. */
export interface BesideReadings {
  readonly qualifier: Column | undefined
  readonly limit: Column | undefined
}

const WORDS: Readonly<Record<keyof BesideReadings, RegExp>> = {
  qualifier: / (?:qual|qualifier|flag|q|sign|prefix|remark code|vorzeichen|signe|signo)$/,
  limit: / (?:rl|mdl|loq|lod|pql|mrl|dl|ql|reporting limit|detection limit|bg|lq|ld)$/,
}

/**
 * The columns that belong to one with readings by their name: `FC Qual` and `FC RL` to free chlorine, under whatever name
 * that stands. `quantityOf` says what a name means, null where it means nothing.
 */
export function besideReadings(
  { quantity, index }: Column,
  columns: readonly Column[],
  quantityOf: (name: string) => string | null,
): BesideReadings {
  const find = (kind: keyof BesideReadings) =>
    columns.find((other) => {
      const name = spelling(other.heading)
      if (other.role === 'quantity' || other.index === index || !WORDS[kind].test(name)) return false
      return quantityOf(name.replace(WORDS[kind], '')) === quantity
    })
  return { qualifier: find('qualifier'), limit: find('limit') }
}
