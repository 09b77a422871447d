import { createUniqueId, onMount } from 'solid-js'
import { say } from '../../words/say'

/** Deleting a notebook cannot be undone, so it is asked for once more. */
export function DeleteDialog(props: { name: string; onDelete: () => void; onClose: () => void }) {
  let dialog: HTMLDialogElement | undefined
  const title = createUniqueId()
  onMount(() => dialog?.showModal())
  return (
    <dialog ref={dialog} aria-labelledby={title} onClose={() => props.onClose()}>
      <h2 id={title}>{say('page.notebooks.delete_question', { name: props.name })}</h2>
      <p>{say('page.notebooks.delete_says')}</p>
      <div class="acts">
        <button type="button" class="act" autofocus onClick={() => dialog?.close()}>
          {say('page.notebooks.keep')}
        </button>
        <button type="button" class="act warm" onClick={() => props.onDelete()}>
          {say('page.notebooks.delete')}
        </button>
      </div>
    </dialog>
  )
}
