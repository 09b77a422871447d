import './carry.css'
import { createSignal, Show } from 'solid-js'
import { hasValue } from '../../engine/outcome'
import { afterPlan } from '../../notebook/carryForward'
import type { Plan } from '../../planner/step'
import { carry } from '../../words/en/carry'
import type { Problem } from '../../words/problem'
import { addWords, say, sentence } from '../../words/say'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { prepareFormulas } from '../shell/formulas'
import { goTo } from '../shell/place'
import { CarryHow, CarryName } from './CarryFields'
import { planEnd } from './planEnd'
import { showScenario } from './showScenario'

addWords(carry)

/** Makes a scenario of the water that a plan ends with, which follows the plan or stays as it is now. */
export function CarryPlanEnd(props: { plan: Plan; scenario: string }) {
  const book = useBook()
  const [live, setLive] = createSignal(true)
  const [fault, setFault] = createSignal<Problem | null>(null)
  const [name, setName] = createSignal<string | null>(null)
  const source = () => book.scenario(props.scenario)?.name ?? ''

  const wanted = () => name() ?? say('carry.name.plan', { name: source() })

  async function make(): Promise<void> {
    const { scenario, plan } = props
    await prepareFormulas()
    const outcome = await book.answered()
    const edit = afterPlan(book.notebook(), book.catalog(), scenario, {
      name: wanted(),
      note: say('carry.note.plan', { name: source() }),
      live: live(),
      readings: planEnd(plan),
      valueAt: (quantity) => {
        const stands = outcome(scenario, quantity)
        return hasValue(stands) ? stands.value : undefined
      },
    })
    const trouble = book.dispatch(edit)
    setFault(trouble)
    if (trouble) return
    goTo({ page: 'worksheets', part: 'sample' })
    showScenario(book, edit)
    announce(say('carry.made', { name: wanted() }))
  }

  return (
    <Show when={props.plan.complete && props.plan.steps.length > 0}>
      <section class="carry carry-end">
        <h2>{say('carry.plan')}</h2>
        <p>{say('carry.plan_says')}</p>
        <CarryHow kind="plan" source={source()} live={live()} onChange={setLive} />
        <CarryName name={wanted()} onInput={setName} />
        <button type="button" class="act" disabled={!book.writable()} onClick={() => void make()}>
          {say('carry.make')}
        </button>
        <Show when={fault()}>{(trouble) => <p class="warm">{sentence(trouble())}</p>}</Show>
      </section>
    </Show>
  )
}
