/**
 * Fetches what reads a kept notebook and tries an edit before it is kept: the schemas, which the first numbers of a first
 * visit do without. What could not be had now is asked for again by the store.
 */
export async function prepareKeeping(): Promise<void> {
  await Promise.all([import('./tried'), import('./replay')]).catch(() => undefined)
}
