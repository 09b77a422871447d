import { createSignal, For, Show } from 'solid-js'
import { newId } from '../../notebook/create'
import type { Product } from '../../notebook/notebook'
import { isLiquid } from '../../planner/cautions'
import { keepPreference, preference } from '../../storage/preference'
import { parseEntry } from '../../units/parseEntry'
import { isProblem, type Problem } from '../../words/problem'
import { say, sentence } from '../../words/say'
import { amountWords } from '../plan/planSentence'
import { useBook } from '../shell/book'
import { unitWords } from '../unitWords'
import { moveOn } from './chain'
import { useDeskPlace } from './placeContext'
import { onShelf, STOCK, type Stock } from './stock'

/** Products on hand by their labels: a digit ticks one, Enter moves on; where none is ticked yet, those of the last pool are offered. */
export function ProductField() {
  const book = useBook()
  const place = useDeskPlace()
  const shelf = () => book.notebook().shelf
  const last = () => STOCK.filter(({ id }) => (preference('desk.stock') ?? '').split(' ').includes(id))
  const empty = () => Object.keys(shelf()).length === 0

  function toggle(stock: Stock): void {
    const there = onShelf(shelf(), stock)
    book.dispatch(there ? { type: 'remove_product', product: there.id } : { type: 'put_product', product: made(stock) })
    keepPreference(
      'desk.stock',
      STOCK.filter((one) => onShelf(shelf(), one))
        .map(({ id }) => id)
        .join(' '),
    )
  }

  function onKeyDown(event: KeyboardEvent & { currentTarget: HTMLElement }): void {
    if (event.ctrlKey || event.metaKey || event.altKey || isText(event.target)) return
    const digit = STOCK[Number(event.key) - 1]
    if (event.key === 'Enter') moveOn(event.currentTarget, event.shiftKey ? -1 : 1)
    else if (event.key === '0' && empty()) for (const stock of last()) toggle(stock)
    else if (/^[1-9]$/.test(event.key) && digit) toggle(digit)
    else return
    event.preventDefault()
  }

  return (
    <fieldset
      class="products"
      data-desk="products"
      disabled={!book.writable()}
      onKeyDown={onKeyDown}
      onFocusIn={() => place.at('products')}
    >
      <legend>{say('page.desk.products')}</legend>
      <p class="quiet">{say('page.desk.products_help')}</p>
      <Show when={empty() && last().length > 0}>
        <button type="button" class="act" onClick={() => last().forEach(toggle)}>
          <kbd>0</kbd> {say('page.desk.same_products')}
        </button>
      </Show>
      <ul>
        <For each={STOCK}>
          {(stock, index) => (
            <li>
              <label>
                <input type="checkbox" checked={onShelf(shelf(), stock) !== undefined} onChange={() => toggle(stock)} />
                <kbd>{index() + 1}</kbd>
                <span>{say(`product.stock.${stock.id}`)}</span>
              </label>
              <Show when={onShelf(shelf(), stock)}>{(product) => <Pack product={product()} />}</Show>
            </li>
          )}
        </For>
      </ul>
    </fieldset>
  )
}

/** In what packs are counted, where a bare figure is typed. */
const PACKS = { us: { L: 'US gal', kg: 'lb' }, metric: { L: 'L', kg: 'kg' } } as const

/** How much a pack holds, so that the customer's sheet can count packs. */
function Pack(props: { product: Product }) {
  const book = useBook()
  const [fault, setFault] = createSignal<Problem | null>(null)
  const unit = () => (isLiquid(props.product.product) ? 'L' : 'kg')
  const shown = () => PACKS[book.notebook().profile][unit()]
  const stands = () =>
    props.product.pack === undefined ? '' : amountWords(props.product.pack, unit(), book.notebook().profile)

  function take(text: string): void {
    if (text === stands()) return
    const entry = parseEntry(text, unit(), { profile: book.notebook().profile, displayed: shown() })
    const { pack: _, ...bare } = props.product
    if (isProblem(entry)) setFault({ ...entry, path: [say('page.desk.pack')] })
    else {
      const pack = entry === null || entry === 'not_taken' ? {} : { pack: entry.canonical }
      setFault(book.dispatch({ type: 'put_product', product: { ...bare, ...pack } }))
    }
  }

  return (
    <>
      <label class="pack">
        <span class="quiet">{say('page.desk.pack')}</span>
        <input
          type="text"
          class="field"
          autocomplete="off"
          placeholder={unitWords(shown())}
          value={stands()}
          onChange={(event) => take(event.currentTarget.value)}
        />
      </label>
      <Show when={fault()}>{(why) => <p class="warm">{sentence(why())}</p>}</Show>
    </>
  )
}

function made({ role, product, strength, basis }: Stock): Product {
  return { id: newId(), role, product, strength, basis }
}

function isText(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement && target.type === 'text'
}
