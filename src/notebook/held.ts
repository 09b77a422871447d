/** What the named properties are now: the inverse of setting them. */
export function held<T extends object, K extends keyof T>(whole: T, set: Partial<Pick<T, K>>): Partial<Pick<T, K>> {
  const now: Partial<Pick<T, K>> = {}
  for (const key of Object.keys(set) as K[]) now[key] = whole[key]
  return now
}
