import { createMemo } from 'solid-js'
import { say } from '../../words/say'

/** A rate is believed after so many milliseconds. */
const TELLING = 700

/** How far a long piece of work is, how long it still takes, and the way out of it. */
export function ProgressLine(props: {
  label: string
  done: number
  total: number
  says: string
  onCancel: () => void
}) {
  const since = performance.now()
  const left = createMemo(() => {
    const spent = performance.now() - since
    if (props.done <= 0 || spent < TELLING) return ''
    const seconds = Math.ceil(((props.total - props.done) * spent) / props.done / 1_000)
    if (seconds <= 1) return say('page.lab.nearly_there')
    if (seconds < 100) return say('page.lab.seconds_left', { seconds })
    return say('page.lab.minutes_left', { minutes: Math.round(seconds / 60) })
  })
  return (
    <div class="progress">
      <progress aria-label={props.label} value={props.done} max={Math.max(props.total, 1)} />
      <span class="quiet">{props.says}</span>
      <span class="quiet left">{left()}</span>
      <button type="button" class="act" onClick={() => props.onCancel()}>
        {say('page.lab.cancel')}
      </button>
    </div>
  )
}
