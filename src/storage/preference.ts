/**
 * A small choice of this browser, such as the colour of the paper or the notebook that was open last. Never part of a
 * notebook; lost without harm, so that blocked storage is no error here.
 */
export function preference(name: string): string | null {
  try {
    return localStorage.getItem(`basinbook.${name}`)
  } catch {
    return null
  }
}

export function keepPreference(name: string, value: string): void {
  try {
    localStorage.setItem(`basinbook.${name}`, value)
  } catch {
    // The choice holds until the page is closed.
  }
}
