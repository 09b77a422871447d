import { createSignal, For, Show } from 'solid-js'
import { newId } from '../../notebook/create'
import type { Product } from '../../notebook/notebook'
import type { Addition } from '../../notebook/record'
import { isLiquid } from '../../planner/cautions'
import { parseEntry } from '../../units/parseEntry'
import { isProblem, type Problem, problem } from '../../words/problem'
import { say } from '../../words/say'
import { Problems } from '../notebooks/Problems'
import { productWords } from '../plan/planSentence'
import { BASES, PRODUCTS } from '../plan/shelfChoices'
import { unitWords } from '../unitWords'
import type { RecordView } from './createRecord'
import { thisMinute } from './today'

const ALL = [...new Set(Object.values(PRODUCTS).flat())]

/** What was added to the pool, as somebody remembers it: a product with its label, how much, when. */
export function AdditionForm(props: { view: RecordView; onDone: () => void }) {
  const { book } = props.view
  const shelf = () => Object.values(book.notebook().shelf)
  const [chosen, setChosen] = createSignal(shelf()[0]?.id ?? 'salt')
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const item = (): Product | undefined => shelf().find(({ id }) => id === chosen())
  const product = () => item()?.product ?? chosen()
  const unit = (): Addition['unit'] => (product() === 'water' ? 'm³' : isLiquid(product()) ? 'L' : 'kg')
  const shown = () =>
    book.notebook().profile === 'us' ? { kg: 'lb', L: 'US gal', 'm³': 'US gal' }[unit()] : (unit() as string)

  function figure(form: FormData, name: string, canonical: string, displayed: string): number | undefined | Problem {
    const text = String(form.get(name) ?? '')
    const entry = parseEntry(text, canonical, { profile: book.notebook().profile, displayed })
    if (entry === null || entry === 'not_taken') return undefined
    return isProblem(entry)
      ? { ...entry, path: [say(`record.add.${name}`, { unit: unitWords(displayed) })] }
      : entry.canonical
  }

  function add(event: SubmitEvent & { currentTarget: HTMLFormElement }): void {
    event.preventDefault()
    const form = new FormData(event.currentTarget)
    const amount = figure(form, 'amount', unit(), shown())
    const strength = figure(form, 'strength', '1', '1')
    const wrong = [amount, strength].filter(isProblem)
    if (amount === undefined || (typeof amount === 'number' && amount <= 0)) wrong.push(problem('record_no_amount'))
    if (wrong.length > 0 || typeof amount !== 'number') {
      setProblems(wrong)
      return
    }
    const addition: Addition = {
      id: newId(),
      date: String(form.get('when') ?? ''),
      product: product(),
      amount,
      unit: unit(),
      ...(typeof strength === 'number' && product() !== 'water' ? { strength, basis: String(form.get('basis')) } : {}),
      note: String(form.get('note') ?? '').trim(),
    }
    const refused = book.dispatch({ type: 'put_addition', addition })
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
        <label>
          {say('record.add.product')}
          <select class="field" name="product" onChange={(event) => setChosen(event.currentTarget.value)}>
            <Show when={shelf().length > 0}>
              <optgroup label={say('record.add.on_hand')}>
                <For each={shelf()}>
                  {(one) => (
                    <option value={one.id} selected={one.id === chosen()}>
                      {[productWords(one.product), one.strength].filter((part) => part !== undefined).join(' ')}
                    </option>
                  )}
                </For>
              </optgroup>
            </Show>
            <optgroup label={say('record.add.others')}>
              <For each={ALL}>
                {(id) => (
                  <option value={id} selected={id === chosen()}>
                    {productWords(id)}
                  </option>
                )}
              </For>
              <option value="water" selected={chosen() === 'water'}>
                {say('record.add.water')}
              </option>
            </optgroup>
          </select>
        </label>
        <label>
          {say('record.add.amount', { unit: unitWords(shown()) })}
          <input class="field" name="amount" autocomplete="off" inputmode="decimal" required />
        </label>
        <Show when={product() !== 'water'}>
          <label>
            {say('record.add.strength')}
            <input
              class="field"
              name="strength"
              autocomplete="off"
              inputmode="decimal"
              value={item()?.strength ?? ''}
            />
          </label>
          <label>
            {say('record.add.basis')}
            <select class="field" name="basis">
              <For each={BASES}>
                {(basis) => (
                  <option value={basis} selected={basis === item()?.basis}>
                    {say(`choice.acid_strength_basis.${basis}`)}
                  </option>
                )}
              </For>
            </select>
          </label>
        </Show>
        <label>
          {say('record.add.note')}
          <input class="field" name="note" autocomplete="off" maxlength={500} />
        </label>
        <button type="submit" class="act main">
          {say('record.add.do')}
        </button>
      </form>
      <Problems problems={problems()} />
    </>
  )
}
