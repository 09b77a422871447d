/** Whether this tab may write a notebook. */
export interface Claim {
  readonly role: 'writer' | 'reader'
  /** gives the notebook free, or stops waiting for it */
  release(): void
}

/**
 * Claims a notebook for writing, by one Web Lock a notebook: the first tab writes, the others read. The lock ends with
 * the tab, however it ends.
 *
 * @param onWriterGone a reader that gives this waits in line, and is called when the lock has become its own: it should
 *   load the notebook again and may then write, until `release`
 * @param locks the browser's own; where a page has none, or may not use them, it writes, and the sequence numbers of the
 *   log alone keep two tabs apart
 */
export async function claim(
  id: string,
  onWriterGone?: () => void,
  locks: LockManager | undefined = globalThis.navigator?.locks,
): Promise<Claim> {
  if (locks === undefined) return { role: 'writer', release: () => undefined }
  const name = `basinbook/notebook/${id}`
  const release = await hold(locks, name).catch(() => () => undefined)
  if (release !== null) return { role: 'writer', release }
  const waiting = new AbortController()
  if (onWriterGone !== undefined) void wait(locks, name, waiting.signal, onWriterGone)
  return { role: 'reader', release: () => waiting.abort() }
}

/** What gives the lock free again; null when another tab has it. */
function hold(locks: LockManager, name: string): Promise<(() => void) | null> {
  return new Promise((resolve, reject) => {
    locks
      .request(name, { ifAvailable: true }, (lock) => {
        if (lock === null) return resolve(null)
        return new Promise<void>((free) => resolve(free))
      })
      .catch(reject)
  })
}

/** Waits in line for the lock, then keeps it until the signal. */
async function wait(locks: LockManager, name: string, signal: AbortSignal, gone: () => void): Promise<void> {
  const kept = new Promise<void>((free) => signal.addEventListener('abort', () => free(), { once: true }))
  try {
    await locks.request(name, { signal }, () => {
      gone()
      return kept
    })
  } catch {
    // released while waiting, or refused by the browser: the tab stays a reader
  }
}
