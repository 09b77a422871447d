/** A function, worksheet or set of rules that is not what it was. */
export interface Moved {
  readonly name: string
  readonly was: number
  /** null: it is not there any more */
  readonly is: number | null
}

/** What has moved since something was worked out with the versions `was`. */
export function moved(was: Readonly<Record<string, number>>, now: Readonly<Record<string, number>>): readonly Moved[] {
  return Object.entries(was).flatMap(([name, version]) => {
    const is = Object.hasOwn(now, name) ? (now[name] ?? null) : null
    return is === version ? [] : [{ name, was: version, is }]
  })
}
