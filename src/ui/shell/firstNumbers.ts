/** The longest that anything waits for them: an engine that gives none must not keep the rest away; milliseconds. */
const LONGEST = 20_000

let tell: () => void = () => undefined
const shown = new Promise<void>((resolve) => {
  tell = resolve
})

/** Says that the first numbers are on the page; further calls say nothing new. */
export function firstNumbersShown(): void {
  tell()
}

/**
 * Resolves when the first numbers are on the page, the time given has passed since, and the browser has nothing to do:
 * what a later act needs is fetched then, on a slow machine too never before them.
 * @param pause milliseconds
 */
export async function afterFirstNumbers(pause: number): Promise<void> {
  await Promise.race([shown, passed(LONGEST)])
  await passed(pause)
  if ('requestIdleCallback' in globalThis)
    await new Promise<void>((resolve) => {
      requestIdleCallback(() => resolve(), { timeout: LONGEST })
    })
}

function passed(time: number): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, time)
  })
}
