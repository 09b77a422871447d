import './carry.css'
import { createSignal, Show } from 'solid-js'
import { hasValue } from '../../engine/outcome'
import { scenarioOfWater } from '../../notebook/carryForward'
import { FORETOLD } from '../../planner/bench'
import type { Plan } from '../../planner/step'
import { carry } from '../../words/en/carry'
import type { Problem } from '../../words/problem'
import { addWords, say, sentence } from '../../words/say'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { goTo } from '../shell/place'
import { showScenario } from './showScenario'

addWords(carry)

/** Readings of a plan's end that hold: what its steps foretell, and what none of them moves. */
const HOLDS = [
  ...Object.keys(FORETOLD),
  'temperature',
  'alkalinity_bottle',
  'phosphate',
  'copper',
  'iron',
  'manganese',
  'magnesium',
]

/** Makes a scenario of the water that a plan ends with: in numbers, for a plan is no formula that could be followed. */
export function CarryPlanEnd(props: { plan: Plan; scenario: string }) {
  const book = useBook()
  const [fault, setFault] = createSignal<Problem | null>(null)

  async function make(): Promise<void> {
    const { scenario, plan } = props
    const outcome = await book.answered()
    const source = book.scenario(scenario)?.name ?? ''
    const name = say('carry.name.plan', { name: source })
    const edit = scenarioOfWater(book.notebook(), book.catalog(), scenario, {
      name,
      note: say('carry.note.plan', { name: source }),
      readings: new Map([...plan.end].filter(([quantity]) => HOLDS.includes(quantity))),
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
    announce(say('carry.made', { name }))
  }

  return (
    <Show when={props.plan.steps.length > 0}>
      <section class="carry-end">
        <button type="button" class="act" disabled={!book.writable()} onClick={() => void make()}>
          {say('carry.plan')}
        </button>
        <p class="quiet">{say('carry.plan_says')}</p>
        <Show when={fault()}>{(trouble) => <p class="warm">{sentence(trouble())}</p>}</Show>
      </section>
    </Show>
  )
}
