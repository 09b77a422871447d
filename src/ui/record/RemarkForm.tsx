import { createSignal } from 'solid-js'
import { newId } from '../../notebook/create'
import type { Problem } from '../../words/problem'
import { say } from '../../words/say'
import { Problems } from '../notebooks/Problems'
import type { RecordView } from './createRecord'
import { thisMinute } from './today'

/** A note on the pool, of a day. */
export function RemarkForm(props: { view: RecordView; onDone: () => void }) {
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  function add(event: SubmitEvent & { currentTarget: HTMLFormElement }): void {
    event.preventDefault()
    const form = new FormData(event.currentTarget)
    const remark = { id: newId(), date: String(form.get('when') ?? ''), text: String(form.get('text') ?? '').trim() }
    const refused = props.view.book.dispatch({ type: 'put_remark', remark })
    setProblems(refused ? [refused] : [])
    if (!refused) props.onDone()
  }
  return (
    <>
      <form class="write" onSubmit={add}>
        <label>
          {say('record.add.when')}
          <input class="field" type="datetime-local" name="when" value={thisMinute()} required />
        </label>
        <label class="long">
          {say('record.remark.text')}
          <textarea class="field" name="text" rows={2} maxlength={5000} required />
        </label>
        <button type="submit" class="act main">
          {say('record.add.do')}
        </button>
      </form>
      <Problems problems={problems()} />
    </>
  )
}
