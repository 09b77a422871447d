import { allKept, setNewVersion } from '../shell/newVersion'
import { answerOtherTabs } from './otherTabs'

/** How often a page that stays open asks for a newer version, in milliseconds. */
const ASK_EVERY = 60 * 60_000

/**
 * Registers the service worker that keeps the page in the browser, and watches for a newer version. A page that has come
 * under a newer one is loaded anew, once all that was entered in it is on the disk.
 */
export async function keepOffline(): Promise<void> {
  const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined
  // a page that was not fetched over a secure connection has none
  if (workers === undefined) return
  answerOtherTabs()
  let controlled = workers.controller !== null
  workers.addEventListener('controllerchange', () => {
    // the first worker of a first visit takes over the very version that is open
    if (controlled) void allKept().then(() => location.reload())
    controlled = true
  })
  const registration = await workers.register(`${import.meta.env.BASE_URL}sw.js`).catch(() => null)
  // refused, or in a browser where the reader has service workers switched off, answered with nothing
  if (!registration) return
  watch(registration, workers)
  setInterval(() => void registration.update().catch(() => undefined), ASK_EVERY)
}

function watch(registration: ServiceWorkerRegistration, workers: ServiceWorkerContainer): void {
  const look = () => {
    if (registration.waiting !== null && workers.controller !== null) setNewVersion(registration.waiting)
  }
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', look))
  look()
}
