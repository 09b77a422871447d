/** What the browser says of keeping what is stored here (Storage Standard, persistent storage). */
export type Kept = 'kept' | 'may_be_cleared' | 'unknown'

/** A page that was not fetched over a secure connection has no such part of the browser. */
const manager = (): StorageManager | undefined => globalThis.navigator?.storage

export async function promised(): Promise<Kept> {
  try {
    const answer = await manager()?.persisted()
    return answer === undefined ? 'unknown' : answer ? 'kept' : 'may_be_cleared'
  } catch {
    return 'unknown'
  }
}

/** Asks the browser to keep everything until the reader deletes it. Some decide by themselves, some ask the reader. */
export async function askToKeep(): Promise<Kept> {
  try {
    const answer = await manager()?.persist()
    return answer === undefined ? 'unknown' : answer ? 'kept' : 'may_be_cleared'
  } catch {
    return 'unknown'
  }
}

/** Bytes that are used and may be used; null where the browser does not say. */
export async function room(): Promise<{ readonly used: number; readonly quota: number } | null> {
  try {
    const { usage, quota } = (await manager()?.estimate()) ?? {}
    return usage === undefined || quota === undefined ? null : { used: usage, quota }
  } catch {
    return null
  }
}
