import { createEffect, createMemo, createSignal, For, on, Show } from 'solid-js'
import type { SolveOrder } from '../../study/solveBack'
import { type Problem, problem } from '../../words/problem'
import { say, sentence } from '../../words/say'
import { labelOf } from '../labelOf'
import { Problems } from '../notebooks/Problems'
import { useBook } from '../shell/book'
import { inputsBehind } from './chartDraft'
import { createStudied } from './createStudied'
import { type Entered, isUnread } from './entered'
import { FigureField } from './FigureField'
import { QuantitySelect } from './QuantitySelect'
import { ScenarioSelect } from './ScenarioSelect'
import { SolvedView } from './SolvedView'
import { isRefusal, solveOrder } from './solveOrder'
import { usualSpan } from './span'
import { heldIn, studyColumn } from './studyColumn'

/** The wanted result, the input that may be varied and how far: the values found, or why there is none. */
export function SolvePart() {
  const book = useBook()
  const selected = book.selection.cell()
  const number = (unit: string | undefined) => unit !== undefined && unit !== 'choice' && unit !== 'truth'
  const begin =
    selected?.row.quantity.formula && number(selected.row.quantity.row.unit) ? selected.row.quantity.name : 'lsi'
  const [scenario, setScenario] = createSignal(selected?.scenario ?? book.baseline())
  const [output, setOutput] = createSignal(begin)
  const [input, setInput] = createSignal(inputsBehind(book, begin, scenario())[0] ?? 'ph')
  const spanOf = (name: string) => usualSpan(book.catalog().quantities.get(name)?.row, book.unit(name))
  const [from, setFrom] = createSignal<Entered>(spanOf(input())[0])
  const [to, setTo] = createSignal<Entered>(spanOf(input())[1])
  const [wanted, setWanted] = createSignal<Entered>(null)
  const [asked, setAsked] = createSignal<SolveOrder | null>(null)
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const [done, setDone] = createSignal('')
  const label = (name: string) => labelOf(name, book.catalog().quantities.get(name)?.row)
  const column = createMemo(() => studyColumn(book, scenario(), [input(), output()]))
  const held = createMemo(() => heldIn(book, scenario(), input(), output()))
  const studied = createStudied('solve', asked, 0)

  // what was found holds for the water that it was found in
  createEffect(on([column, output, input, from, to, wanted], () => setAsked(null), { defer: true }))

  /** An emptied field is no figure either: what stood in it is not asked for any more. */
  function take(set: (value: Entered) => void, code: 'study_needs_wanted' | 'study_needs_span', quantity: string) {
    return (value: Entered) => {
      setProblems([])
      set(value ?? { text: '', why: problem(code, [label(quantity)]) })
    }
  }

  function find(event: SubmitEvent & { readonly currentTarget: HTMLFormElement }): void {
    event.preventDefault()
    setDone('')
    const fields = { scenario: scenario(), output: output(), input: input(), wanted: wanted(), from: from(), to: to() }
    const order = solveOrder(book, fields)
    if (order === null) return
    setAsked(isRefusal(order) ? null : order)
    // what is wrong with a field stands beside it
    const faulty = [wanted(), from(), to()].some(isUnread)
    setProblems(isRefusal(order) && !faulty ? order : [])
    if (faulty) event.currentTarget.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus()
  }

  return (
    <div class="work" aria-busy={studied.working()}>
      <p class="intro">{say('page.study.solve.says')}</p>
      <form class="asks" onSubmit={find}>
        <ScenarioSelect value={scenario()} onChange={setScenario} />
        <QuantitySelect
          label={say('page.study.output')}
          kind="computed"
          value={output()}
          onChange={(name) => {
            setOutput(name)
            setWanted(null)
          }}
        />
        <FigureField
          label={say('page.study.solve.want')}
          quantity={output()}
          value={wanted()}
          onChange={take((value) => void setWanted(value), 'study_needs_wanted', output())}
        />
        <QuantitySelect
          label={say('page.study.solve.vary')}
          kind="input"
          value={input()}
          onChange={(name) => {
            const [low, high] = spanOf(name)
            setInput(name)
            setFrom(low)
            setTo(high)
          }}
        />
        <FigureField
          label={say('page.study.from')}
          quantity={input()}
          value={from()}
          onChange={take((value) => void setFrom(value), 'study_needs_span', input())}
        />
        <FigureField
          label={say('page.study.to')}
          quantity={input()}
          value={to()}
          onChange={take((value) => void setTo(value), 'study_needs_span', input())}
        />
        <button type="submit" class="act main" disabled={column() === null}>
          {say('page.study.solve.go')}
        </button>
      </form>
      <Problems problems={problems()} />
      <Show when={studied.problem()}>{(why) => <p class="warm">{sentence(why())}</p>}</Show>
      <div role="status">
        <Show when={done()}>{(text) => <p class="large-says">{text()}</p>}</Show>
        <Show when={studied.answered()}>
          {(now) => <SolvedView scenario={scenario()} order={now().order} solved={now().result} onPut={setDone} />}
        </Show>
      </div>
      <For each={held().length > 0 ? [held()] : []}>
        {(names) => <p class="quiet">{say('page.study.held', { names: names.map(label) })}</p>}
      </For>
    </div>
  )
}
