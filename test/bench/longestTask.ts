import type { Page } from 'playwright-core'

/** The longest task of the page's main thread while `act` runs, in milliseconds. */
export async function longestTask(page: Page, act: () => Promise<unknown>): Promise<number> {
  const client = await page.context().newCDPSession(page)
  const events: { name?: string; dur?: number; tid?: number; pid?: number; args?: { name?: string } }[] = []
  client.on('Tracing.dataCollected', ({ value }) => void events.push(...(value as typeof events)))
  await client.send('Tracing.start', {
    transferMode: 'ReportEvents',
    // Tasks alone: told what happens within them, they take a quarter longer.
    traceConfig: { includedCategories: ['toplevel', '__metadata'] },
  })
  await act()
  const done = new Promise<void>((resolve) => client.once('Tracing.tracingComplete', () => resolve()))
  await client.send('Tracing.end')
  await done
  const mains = new Set(
    events.filter((e) => e.name === 'thread_name' && e.args?.name === 'CrRendererMain').map((e) => `${e.pid}/${e.tid}`),
  )
  const runs = events
    .filter((e) => e.name === 'ThreadControllerImpl::RunTask' && mains.has(`${e.pid}/${e.tid}`))
    .map((e) => (e.dur ?? 0) / 1000)
  return Math.max(0, ...runs)
}
