import { createResource, createSignal, createUniqueId, For, onMount, Show } from 'solid-js'
import type { Forgetting } from '../../storage/forget'
import type { Entry, StoredExport } from '../../storage/records'
import { isProblem } from '../../words/problem'
import { say } from '../../words/say'
import { whenWords } from '../lab/fileFacts'
import { useDesk } from '../shell/desk'
import { downloadText } from './downloadText'
import { forgettingOf, type Wish } from './forgettingOf'
import { leftBehind } from './leftBehind'

const WISHES: readonly Wish[] = ['blank', 'remove', 'leave']

/** Deleting a notebook cannot be undone, so it is asked for once more, with all that would stay of it elsewhere. */
export function ForgetDialog(props: { entry: Entry; onDelete: (forgetting: Forgetting) => void; onClose: () => void }) {
  const desk = useDesk()
  const title = createUniqueId()
  let dialog: HTMLDialogElement | undefined
  const [wishes, setWishes] = createSignal<ReadonlyMap<string, Wish>>(new Map())
  const [left] = createResource(async () => {
    const notebook = await desk.peek(props.entry.id)
    return leftBehind(props.entry.id, props.entry.name, isProblem(notebook) ? null : notebook)
  })
  const wishOf = (id: string): Wish => wishes().get(id) ?? 'blank'
  onMount(() => dialog?.showModal())

  return (
    <dialog ref={dialog} class="forget" aria-labelledby={title} onClose={() => props.onClose()}>
      <h2 id={title}>{say('page.notebooks.delete_question', { name: props.entry.name })}</h2>
      <p>{say('forget.says')}</p>
      <Show when={left()} fallback={<p class="quiet">{say('forget.looking')}</p>}>
        {(found) => (
          <>
            <For each={found().imports}>
              {({ head, rows }) => (
                <fieldset>
                  <legend>{say('forget.import', { file: head.name, count: rows.size })}</legend>
                  <For each={WISHES}>
                    {(wish) => (
                      <label>
                        <input
                          type="radio"
                          name={`wish-${head.id}`}
                          checked={wishOf(head.id) === wish}
                          onChange={() => setWishes(new Map(wishes()).set(head.id, wish))}
                        />
                        {say(`forget.import.${wish}`)}
                      </label>
                    )}
                  </For>
                </fieldset>
              )}
            </For>
            <Files says={say('forget.files')} files={found().files} />
            <Files says={say('forget.backups')} files={found().backups} />
            <Show when={found().files.length + found().backups.length > 0}>
              <button type="button" class="act" onClick={() => saveList([...found().files, ...found().backups])}>
                {say('forget.save_list')}
              </button>
            </Show>
          </>
        )}
      </Show>
      <div class="acts">
        <button type="button" class="act" autofocus onClick={() => dialog?.close()}>
          {say('page.notebooks.keep')}
        </button>
        <button
          type="button"
          class="act warm"
          disabled={left() === undefined}
          onClick={() => props.onDelete(forgettingOf(left()?.imports ?? [], wishOf))}
        >
          {say('page.notebooks.delete')}
        </button>
      </div>
    </dialog>
  )
}

function Files(props: { says: string; files: readonly StoredExport[] }) {
  return (
    <Show when={props.files.length > 0}>
      <p>{props.says}</p>
      <ul class="files">
        <For each={props.files}>{(saved) => <li>{fileWords(saved)}</li>}</For>
      </ul>
    </Show>
  )
}

function fileWords({ file, when, sha256 }: StoredExport): string {
  const facts = { file, when: whenWords(when), sha256: sha256.slice(0, 12) }
  return say(sha256 === '' ? 'forget.file_unhashed' : 'forget.file', facts)
}

function saveList(files: readonly StoredExport[]): void {
  const lines = files.map(({ file, when, sha256 }) => `${new Date(when).toISOString()}  ${sha256}  ${file}`)
  downloadText(`${say('forget.list_name')}.txt`, `${lines.join('\n')}\n`, 'text/plain')
}
