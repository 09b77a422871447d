import { createEffect, createMemo, createSignal, For, on, Show } from 'solid-js'
import { restsOn } from '../../study/restsOn'
import type { SolveOrder } from '../../study/solveBack'
import { isProblem, type Problem, problem } from '../../words/problem'
import { say, sentence } from '../../words/say'
import { decimalsOf } from '../decimalsOf'
import { labelOf } from '../labelOf'
import { Problems } from '../notebooks/Problems'
import { useBook } from '../shell/book'
import { axisOf } from './axis'
import { inputsBehind } from './chartDraft'
import { createStudied } from './createStudied'
import { FigureField } from './FigureField'
import { QuantitySelect } from './QuantitySelect'
import { ScenarioSelect } from './ScenarioSelect'
import { SolvedView } from './SolvedView'
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
  const [from, setFrom] = createSignal(spanOf(input())[0])
  const [to, setTo] = createSignal(spanOf(input())[1])
  const [wanted, setWanted] = createSignal<number | null>(null)
  const [asked, setAsked] = createSignal<SolveOrder | null>(null)
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const [done, setDone] = createSignal('')
  const label = (name: string) => labelOf(name, book.catalog().quantities.get(name)?.row)
  const column = createMemo(() => studyColumn(book, scenario(), [input(), output()]))
  const behind = createMemo(() => restsOn(book.catalog(), output()))
  const held = createMemo(() => heldIn(book, scenario(), input(), output()))
  const studied = createStudied('solve', asked, 0)

  // what was found holds for the water that it was found in
  createEffect(on([column, output, input, from, to, wanted], () => setAsked(null), { defer: true }))

  function take<T>(set: (value: T) => void) {
    return (value: T | null | Problem) => {
      if (isProblem(value)) setProblems([value])
      else if (value !== null) {
        setProblems([])
        set(value)
      }
    }
  }

  function find(event: SubmitEvent): void {
    event.preventDefault()
    setDone('')
    const water = column()
    const goal = wanted()
    const row = book.catalog().quantities.get(output())?.row
    if (goal === null) setProblems([problem('study_needs_wanted', [label(output())])])
    else if (!(from() < to())) setProblems([problem('span_empty')])
    else if (!behind().has(input()))
      setProblems([problem('study_not_read', [], { output: label(output()), input: label(input()) })])
    else if (water && row) {
      const axis = axisOf(book, input())
      setProblems([])
      setAsked({
        column: water,
        input: input(),
        from: from(),
        to: to(),
        output: output(),
        wanted: goal,
        // a hundredth of the last place that is shown
        tolerance: 10 ** -(decimalsOf(row) + 2),
        canonicalUnit: axis.canonical,
        unit: axis.unit,
      })
    }
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
          onChange={take<number>((value) => void setWanted(value))}
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
          onChange={take<number>((value) => void setFrom(value))}
        />
        <FigureField
          label={say('page.study.to')}
          quantity={input()}
          value={to()}
          onChange={take<number>((value) => void setTo(value))}
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
