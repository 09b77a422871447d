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

/**
 * Takes out every small thing that this browser keeps about a notebook: what has its id in its name or value, drafts and notes in
 * which one of the names stands, and what was typed to look for a pool.
 */
export function forgetPreferences(notebook: string, names: readonly string[]): void {
  try {
    for (const key of Object.keys(localStorage)) {
      if (!key.startsWith('basinbook.')) continue
      const value = localStorage.getItem(key) ?? ''
      const written = key.includes('draft') || key.includes('note')
      const speaksOfIt = names.some((name) => name !== '' && value.includes(name)) || value.includes('"notebook":""')
      if ((written && speaksOfIt) || key.includes(notebook) || value.includes(notebook)) localStorage.removeItem(key)
    }
  } catch {
    // Where the browser keeps nothing there is nothing to take out.
  }
}
