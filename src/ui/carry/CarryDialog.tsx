import './carry.css'
import { createMemo, createSignal, createUniqueId, For, onMount, Show } from 'solid-js'
import { hasValue } from '../../engine/outcome'
import { CARRIED_WATERS, type WaterName } from '../../notebook/carriedWater'
import { carriedReadings, carryForward } from '../../notebook/carryForward'
import { carry } from '../../words/en/carry'
import { isProblem, type Problem } from '../../words/problem'
import { addWords, say, sentence } from '../../words/say'
import { focusCell } from '../grid/focusCell'
import { openOver } from '../grid/opened'
import { labelOf } from '../labelOf'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { prepareFormulas } from '../shell/formulas'
import { shownValue } from '../shownValue'
import { CarryHow, CarryName } from './CarryFields'
import { showScenario } from './showScenario'

addWords(carry)

const WATERS = Object.keys(CARRIED_WATERS) as readonly WaterName[]

/** Makes a scenario of the water that one of a scenario's worksheets foretells: which water, linked or as numbers. */
export function CarryDialog(props: { scenario: string }) {
  const book = useBook()
  let dialog: HTMLDialogElement | undefined
  const title = createUniqueId()
  // The dialog is of one scenario, and closed before another's is opened.
  const { scenario } = props
  const source = () => book.scenario(scenario)?.name ?? ''
  const valueAt = (quantity: string) => {
    const outcome = book.outcome(scenario, quantity)
    return hasValue(outcome) ? outcome.value : undefined
  }
  const readingsOf = (water: WaterName) => carriedReadings(book.catalog(), CARRIED_WATERS[water], valueAt)
  const foretells = (water: WaterName) =>
    readingsOf(water).some(({ quantity, from }) => from !== null && from !== quantity)
  const [water, setWater] = createSignal<WaterName>(WATERS.find(foretells) ?? 'dilution')
  const [live, setLive] = createSignal(true)
  const [name, setName] = createSignal<string | null>(null)
  const [fault, setFault] = createSignal<Problem | null>(null)
  const wanted = () => name() ?? say(`carry.name.${water()}`, { name: source() })
  const readings = createMemo(() => readingsOf(water()))

  onMount(() => dialog?.showModal())

  function close(): void {
    openOver(null)
    focusCell(book)
  }

  async function make(): Promise<void> {
    await prepareFormulas()
    const outcome = await book.answered()
    const edit = carryForward(book.notebook(), book.catalog(), scenario, {
      name: wanted(),
      note: say(`carry.note.${water()}`, { name: source() }),
      water: CARRIED_WATERS[water()],
      live: live(),
      valueAt: (quantity) => {
        const stands = outcome(scenario, quantity)
        return hasValue(stands) ? stands.value : undefined
      },
    })
    const trouble = isProblem(edit) ? edit : book.dispatch(edit)
    setFault(trouble)
    if (trouble || isProblem(edit)) return
    dialog?.close()
    showScenario(book, edit)
    announce(say('carry.made', { name: wanted() }))
  }

  return (
    <dialog ref={dialog} class="carry" aria-labelledby={title} onClose={close}>
      <form
        method="dialog"
        onSubmit={(event) => {
          event.preventDefault()
          void make()
        }}
      >
        <h2 id={title}>{say('carry.title', { name: source() })}</h2>
        <p>{say('carry.intro', { name: source() })}</p>
        <fieldset>
          <legend>{say('carry.water')}</legend>
          <For each={WATERS}>
            {(one) => (
              <label>
                <input
                  type="radio"
                  name="water"
                  checked={water() === one}
                  disabled={!foretells(one)}
                  onChange={() => setWater(one)}
                />
                <span>
                  {say(`carry.water.${one}`)}
                  <Show when={!foretells(one)}>
                    <small>{say('carry.nothing_foretold')}</small>
                  </Show>
                </span>
              </label>
            )}
          </For>
          <p class="quiet">{say('carry.several')}</p>
        </fieldset>
        <CarryHow kind="live" source={source()} live={live()} onChange={setLive} />
        <table>
          <thead>
            <tr>
              <th scope="col">{say('carry.col.reading')}</th>
              <th scope="col">{say('carry.col.now')}</th>
              <th scope="col">{say('carry.col.then')}</th>
            </tr>
          </thead>
          <tbody>
            <For each={readings()}>
              {({ quantity, from }) => (
                <tr>
                  <th scope="row">{labelOf(quantity, book.catalog().quantities.get(quantity)?.row)}</th>
                  <td>{shownValue(book, scenario, quantity) || '–'}</td>
                  <td>{thenText(quantity, from)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <p class="quiet">{say('carry.not_carried')}</p>
        <p class="quiet">{say('carry.beside', { name: source() })}</p>
        <CarryName name={wanted()} onInput={setName} />
        <Show when={fault()}>
          {(trouble) => (
            <p class="warm" role="alert">
              {sentence(trouble())}
            </p>
          )}
        </Show>
        <div class="acts">
          <button type="button" class="act" onClick={() => dialog?.close()}>
            {say('carry.cancel')}
          </button>
          <button type="submit" class="act main" disabled={!foretells(water())}>
            {say('carry.make')}
          </button>
        </div>
      </form>
    </dialog>
  )

  function thenText(quantity: string, from: string | null): string {
    if (from === null) return say('carry.not_taken')
    const value = shownValue(book, scenario, from)
    return from === quantity ? say('carry.stays', { value }) : value
  }
}
