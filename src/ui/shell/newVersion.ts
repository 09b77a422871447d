import { createSignal } from 'solid-js'

const [waiting, setWaiting] = createSignal<ServiceWorker | null>(null)

/** The newer version of the page that waits to be taken; null when this is the newest. Tracked. */
export const newVersion = waiting
export const setNewVersion = setWaiting

let ask: () => Promise<boolean> = () => Promise.resolve(true)

/** Has the open notebook asked, before the page is loaded anew, whether all that was entered is on the disk. */
export function beforeNewVersion(allKept: () => Promise<boolean>): void {
  ask = allKept
}

/** Waits for what is being kept; false when something would be lost by loading the page anew. */
export function allKept(): Promise<boolean> {
  return ask()
}
