import { createSignal, For, Show } from 'solid-js'
import { newId } from '../../notebook/create'
import type { Product } from '../../notebook/notebook'
import { isLiquid } from '../../planner/cautions'
import { parseEntry } from '../../units/parseEntry'
import { isProblem, type Problem } from '../../words/problem'
import { say } from '../../words/say'
import { Problems } from '../notebooks/Problems'
import { useBook } from '../shell/book'
import { amountWords, productWords } from './planSentence'
import { BASES, PRODUCTS, ROLE_NAMES, type RoleName } from './shelfChoices'

/** Products on hand: the plan chooses the cheapest of them where prices are given, and names the runner-up. */
export function Shelf() {
  const book = useBook()
  const [role, setRole] = createSignal<RoleName>('acid')
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const items = () => Object.values(book.notebook().shelf)

  /** A number of the form, or nothing where the field is empty. */
  function field(form: FormData, name: string, unit: string): number | undefined | Problem {
    const entry = parseEntry(String(form.get(name) ?? ''), unit, { profile: book.notebook().profile, displayed: unit })
    if (entry === null || entry === 'not_taken') return undefined
    return isProblem(entry) ? { ...entry, path: [say(`page.shelf.${name}`)] } : entry.canonical
  }

  function add(event: SubmitEvent & { currentTarget: HTMLFormElement }): void {
    event.preventDefault()
    const form = new FormData(event.currentTarget)
    const product = String(form.get('product'))
    const strength = field(form, 'strength', '1')
    const pack = field(form, 'pack', isLiquid(product) ? 'L' : 'kg')
    const price = field(form, 'price', '1')
    const wrong = [strength, pack, price].filter(isProblem)
    if (wrong.length > 0) {
      setProblems(wrong)
      return
    }
    const given = (name: string, value: number | undefined | Problem) =>
      typeof value === 'number' ? { [name]: value } : {}
    const item: Product = {
      id: newId(),
      role: role(),
      product,
      ...given('strength', strength),
      ...(typeof strength === 'number' ? { basis: String(form.get('basis')) } : {}),
      ...given('pack', pack),
      ...given('price', price),
    }
    const refused = book.dispatch({ type: 'put_product', product: item })
    setProblems(refused ? [refused] : [])
    if (!refused) event.currentTarget.reset()
  }

  return (
    <details class="shelf">
      <summary>{say('page.shelf', { count: items().length })}</summary>
      <p class="quiet">{say('page.shelf.intro')}</p>
      <ul class="lines">
        <For each={items()}>
          {(item) => (
            <li>
              <span class="name">{productWords(item.product)}</span>
              <span class="quiet">{labelWords(item, book.notebook().profile)}</span>
              <button
                type="button"
                class="act"
                disabled={!book.writable()}
                onClick={() => book.dispatch({ type: 'remove_product', product: item.id })}
              >
                {say('page.shelf.remove')}
              </button>
            </li>
          )}
        </For>
      </ul>
      <Show when={book.writable()}>
        <form onSubmit={add}>
          <label>
            {say('page.shelf.role')}
            <select class="field" name="role" onChange={(event) => setRole(event.currentTarget.value as RoleName)}>
              <For each={ROLE_NAMES}>{(name) => <option value={name}>{say(`page.shelf.role.${name}`)}</option>}</For>
            </select>
          </label>
          <label>
            {say('page.shelf.product')}
            <select class="field" name="product">
              <For each={PRODUCTS[role()]}>{(id) => <option value={id}>{productWords(id)}</option>}</For>
            </select>
          </label>
          <label>
            {say('page.shelf.strength')}
            <input class="field" name="strength" autocomplete="off" inputmode="decimal" />
          </label>
          <label>
            {say('page.shelf.basis')}
            <select class="field" name="basis">
              <For each={BASES}>
                {(basis) => <option value={basis}>{say(`choice.acid_strength_basis.${basis}`)}</option>}
              </For>
            </select>
          </label>
          <label>
            {say('page.shelf.pack')}
            <input class="field" name="pack" autocomplete="off" placeholder={say('page.shelf.pack_example')} />
          </label>
          <label>
            {say('page.shelf.price')}
            <input class="field" name="price" autocomplete="off" inputmode="decimal" />
          </label>
          <button type="submit" class="act main">
            {say('page.shelf.add')}
          </button>
        </form>
        <Problems problems={problems()} />
      </Show>
    </details>
  )
}

function labelWords(item: Product, profile: 'metric' | 'us'): string {
  const parts: string[] = []
  if (item.strength !== undefined && item.basis !== undefined) {
    parts.push(`${item.strength} ${say(`choice.acid_strength_basis.${item.basis}`)}`)
  }
  if (item.pack !== undefined) parts.push(amountWords(item.pack, isLiquid(item.product) ? 'L' : 'kg', profile))
  if (item.price !== undefined) parts.push(say('page.shelf.price_of', { price: item.price }))
  return parts.join(' · ')
}
