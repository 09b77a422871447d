import { say } from '../../words/say'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { EntryField } from './EntryField'
import { readingWords } from './readingWords'
import { isUnlikely } from './unlikely'

/** What is said beside a quantity, and whether Enter asks before it moves on. */
export interface Asking {
  readonly notes: (quantity: string) => readonly string[]
  readonly asks: (quantity: string) => boolean
}

/** A figure of the pool itself, questioned as a reading is: every dose rests on the volume, on the bag and on the cell. */
export function PoolEntry(props: { quantity: string; asking: Asking; label?: string; hint?: string }) {
  const book = useBook()
  const row = () => book.catalog().quantities.get(props.quantity)?.row
  const cell = () => book.source(book.baseline(), props.quantity).cell
  const notes = () => {
    const others = props.asking.notes(props.quantity)
    if (!isUnlikely(row(), cell())) return others
    const name = props.label ?? labelOf(props.quantity, row())
    return [say('page.desk.unlikely_pool', { name, value: readingWords(book, props.quantity) }), ...others]
  }
  return (
    <EntryField
      quantity={props.quantity}
      {...(props.label === undefined ? {} : { label: props.label })}
      hint={props.hint ?? ''}
      notes={notes()}
      stay={(now) => isUnlikely(row(), now) || (now !== null && props.asking.asks(props.quantity))}
    />
  )
}
