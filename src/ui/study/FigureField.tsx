import { createUniqueId } from 'solid-js'
import { parseEntry } from '../../units/parseEntry'
import { locale } from '../../words/locale'
import { isProblem, type Problem, problem } from '../../words/problem'
import { useBook } from '../shell/book'
import { unitWords } from '../unitWords'
import { axisOf } from './axis'
import { figureIn } from './figureIn'

/** A field for one value of a quantity in the reader's unit; another unit may be written behind the figure. */
export function FigureField(props: {
  label: string
  quantity: string
  /** canonical; null: nothing there yet */
  value: number | null
  onChange: (value: number | null | Problem) => void
}) {
  const book = useBook()
  const id = createUniqueId()
  const axis = () => axisOf(book, props.quantity)
  const shown = () => (props.value === null ? '' : figureIn(axis().shown(props.value), 6))

  function read(text: string): number | null | Problem {
    const { canonical, unit, label } = axis()
    const entry = parseEntry(text, canonical, {
      profile: book.notebook().profile,
      displayed: unit,
      quantity: props.quantity,
    })
    if (entry === null) return null
    if (entry === 'not_taken') return problem('unreadable_number', [label], { found: '-', decimal: locale().decimal })
    return isProblem(entry) ? { ...entry, path: [label] } : entry.canonical
  }

  return (
    <label class="short" for={id}>
      {props.label} {unitWords(axis().unit)}
      <input
        id={id}
        class="field"
        inputmode="decimal"
        autocomplete="off"
        value={shown()}
        onChange={(event) => props.onChange(read(event.currentTarget.value))}
      />
    </label>
  )
}
