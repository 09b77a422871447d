import { allKept } from '../shell/newVersion'

const LOCK = 'basinbook/page'

/** How long another tab may take to have its edits kept, in milliseconds. */
const PATIENCE = 4_000

type Message = { readonly asks: string } | { readonly answers: string; readonly ready: boolean }

/** One for the tab: it does not hear itself. */
const channel = new BroadcastChannel('basinbook/version')

/** Lets this tab be counted by the others, and answers them whether it may be loaded anew. */
export function answerOtherTabs(): void {
  channel.addEventListener('message', async ({ data }: MessageEvent<Message>) => {
    if ('asks' in data) channel.postMessage({ answers: data.asks, ready: await allKept() } satisfies Message)
  })
  // held for as long as the tab lives; shared, so that every tab has it
  void navigator.locks?.request(LOCK, { mode: 'shared' }, () => new Promise(() => undefined)).catch(() => undefined)
}

/** Asks every other tab; true when each of them has all its edits on the disk. */
export async function otherTabsReady(): Promise<boolean> {
  const held = (await navigator.locks?.query())?.held ?? []
  const others = held.filter(({ name }) => name === LOCK).length - 1
  if (others <= 0) return true
  const question = crypto.randomUUID()
  return new Promise<boolean>((resolve) => {
    let ready = 0
    const end = (all: boolean) => {
      clearTimeout(timer)
      channel.removeEventListener('message', hear)
      resolve(all)
    }
    const hear = ({ data }: MessageEvent<Message>) => {
      if (!('answers' in data) || data.answers !== question) return
      if (!data.ready) end(false)
      else if (++ready >= others) end(true)
    }
    const timer = setTimeout(() => end(false), PATIENCE)
    channel.addEventListener('message', hear)
    channel.postMessage({ asks: question } satisfies Message)
  })
}
