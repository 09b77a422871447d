import { createUniqueId, For } from 'solid-js'
import { say } from '../../words/say'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { moveOn } from './chain'
import { commitCell } from './commitReading'
import { useDeskPlace } from './placeContext'

/** A choice as one line of the form: its first letter chooses, Enter moves on. */
export function ChoiceField(props: { quantity: string; aside?: boolean }) {
  const book = useBook()
  const place = useDeskPlace()
  const name = createUniqueId()
  const row = () => book.catalog().quantities.get(props.quantity)?.row
  const choices = (): readonly string[] => {
    const now = row()
    return now && 'choices' in now ? now.choices : []
  }
  const chosen = () => {
    const { cell } = book.source(book.baseline(), props.quantity)
    return cell?.kind === 'choice' ? cell.id : null
  }
  const words = (id: string) => say(`choice.${props.quantity}.${id}`)
  const choose = (id: string) => commitCell(book, props.quantity, { kind: 'choice', id })

  function onKeyDown(event: KeyboardEvent & { currentTarget: HTMLElement }): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    if (event.key === 'Enter') moveOn(event.currentTarget, event.shiftKey ? -1 : 1)
    else if (event.key === '-' || event.key === 'Delete') commitCell(book, props.quantity, null)
    else if (/^\p{L}$/u.test(event.key)) chooseByLetter(event.currentTarget, event.key.toLowerCase())
    else return
    event.preventDefault()
  }

  function chooseByLetter(group: HTMLElement, letter: string): void {
    const all = choices()
    const at = all.indexOf(chosen() ?? '')
    const next = [...all.slice(at + 1), ...all].find((id) => words(id).toLowerCase().startsWith(letter))
    if (next === undefined) return
    choose(next)
    group.querySelector<HTMLInputElement>(`input[value="${next}"]`)?.focus()
  }

  return (
    <fieldset
      class="line choice"
      data-desk={props.aside ? undefined : props.quantity}
      disabled={!book.writable()}
      onKeyDown={onKeyDown}
      onFocusIn={() => place.at(props.quantity)}
    >
      <legend>{labelOf(props.quantity, row())}</legend>
      <div class="options">
        <For each={choices()}>
          {(id) => (
            <label>
              <input type="radio" name={name} value={id} checked={chosen() === id} onChange={() => choose(id)} />
              <span>{words(id)}</span>
            </label>
          )}
        </For>
      </div>
    </fieldset>
  )
}
