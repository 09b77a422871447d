import { createSignal, Show } from 'solid-js'
import { offline } from '../../words/en/offline'
import { addWords, say } from '../../words/say'
import { allKept, newVersion } from '../shell/newVersion'
import { otherTabsReady } from './otherTabs'

addWords(offline)

/** Says that a newer version of the page waits. The reader chooses when; nothing is loaded anew over an edit that is not kept. */
export function NewVersion() {
  const [hindrance, setHindrance] = createSignal('')
  const [asking, setAsking] = createSignal(false)

  async function take(): Promise<void> {
    setAsking(true)
    setHindrance('')
    if (!(await allKept())) setHindrance(say('page.version.not_kept'))
    else if (!(await otherTabsReady())) setHindrance(say('page.version.other_tab'))
    else newVersion()?.postMessage({ type: 'SKIP_WAITING' })
    setAsking(false)
  }

  return (
    <p class="banner calm" role="status">
      {say('page.version.waits')}
      <button type="button" class="act" disabled={asking()} onClick={() => void take()}>
        {say('page.version.take')}
      </button>
      <Show when={hindrance()}>
        <span class="warm">{hindrance()}</span>
      </Show>
    </p>
  )
}
