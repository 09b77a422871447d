import { For, Show } from 'solid-js'
import { duplicateScenario } from '../../notebook/commands'
import type { Edit } from '../../notebook/edit'
import type { Cell } from '../../notebook/notebook'
import type { Answer } from '../../study/evaluate'
import type { Solved, SolveOrder } from '../../study/solveBack'
import { convert } from '../../units/convert'
import { formatValue } from '../../units/format'
import { isProblem } from '../../words/problem'
import { say, sentence } from '../../words/say'
import { decimalsOf } from '../decimalsOf'
import { problemText } from '../problemText'
import { useBook } from '../shell/book'
import { unitWords } from '../unitWords'
import { axisOf } from './axis'

/** What solving back has found, in sentences, and the acts that put a value into a scenario. */
export function SolvedView(props: {
  scenario: string
  order: SolveOrder
  solved: Solved
  /** told what was done, or why it was not; what was found is then out of date */
  onPut: (said: string) => void
}) {
  const book = useBook()
  const input = () => axisOf(book, props.order.input)
  const output = () => axisOf(book, props.order.output)
  const quantity = () => book.catalog().quantities.get(props.order.output)
  const written = (value: number) => exact(value, input().canonical, input().unit)
  const inputText = (value: number) => `${written(value)} ${input().symbol}`.trim()
  const facts = () => ({
    input: input().label,
    output: output().label,
    wanted: output().text(props.order.wanted),
    from: input().figure(props.order.from),
    to: input().text(props.order.to),
  })
  const result = () => {
    const { solutions } = props.solved
    const [only] = solutions
    if (solutions.length === 1 && only) return say('page.study.solve.one', { ...facts(), value: inputText(only.input) })
    if (solutions.length > 1)
      return say('page.study.solve.several', {
        ...facts(),
        count: solutions.length,
        values: solutions.map(({ input: value }) => inputText(value)),
      })
    return props.solved.stretches.length > 0 ? '' : say('page.study.solve.none', facts())
  }
  const found = () => props.solved.solutions.length + props.solved.stretches.length > 0
  const answerText = (answer: Answer) => {
    if ('problem' in answer) {
      const about = quantity()
      return about ? problemText(answer.problem, about) : sentence(answer.problem)
    }
    return typeof answer.value === 'number' ? output().text(answer.value) : String(answer.value)
  }
  const tolerance = () => {
    const row = quantity()?.row
    const { canonical } = output()
    const figure = formatValue(props.order.tolerance, canonical, canonical, (row ? decimalsOf(row) : 2) + 2)
    return `${figure} ${unitWords(canonical)}`.trim()
  }

  function cellOf(value: number): Cell {
    const { unit, canonical } = input()
    const shown = convert(value, canonical, unit)
    const entered = isProblem(shown) ? String(value) : String(Number(shown.toPrecision(15)))
    return { kind: 'value', entered, unit: isProblem(shown) ? canonical : unit, canonical: value }
  }

  function put(value: number): void {
    const edit: Edit = {
      type: 'set_cell',
      scenario: props.scenario,
      quantity: props.order.input,
      cell: cellOf(value),
    }
    dispatch(edit, value, book.scenario(props.scenario)?.name ?? '')
  }

  /** A scenario with all that the first has, and the value. */
  function putNew(value: number): void {
    const notebook = book.notebook()
    const name = say('page.study.solve.new_name', { input: input().label, value: inputText(value) })
    const added = duplicateScenario(notebook, props.scenario, name)
    if (isProblem(added) || added.type !== 'add_scenario') return
    const cells = { ...added.cells, [props.order.input]: cellOf(value) }
    dispatch({ ...added, cells }, value, added.scenario.name)
  }

  // The sentence is made first: with the edit, what was found is gone.
  function dispatch(edit: Edit, value: number, scenario: string): void {
    const text = say('page.study.solve.put_done', { input: input().label, value: inputText(value), scenario })
    const tell = props.onPut
    const refused = book.dispatch(edit)
    tell(refused ? sentence(refused) : text)
  }

  return (
    <section class="found">
      <Show when={result()}>{(text) => <p class="large-says">{text()}</p>}</Show>
      <For each={props.solved.stretches}>
        {({ from, to }) => (
          <p class="large-says">
            {say('page.study.solve.stretch', { ...facts(), from: input().figure(from), to: input().text(to) })}
          </p>
        )}
      </For>
      <Show when={props.solved.solutions.length > 0}>
        <p class="quiet">
          {say('page.study.solve.checked', {
            output: facts().wanted,
            tolerance: tolerance(),
          })}
        </p>
        <ul class="acts stacked">
          <For each={props.solved.solutions}>
            {({ input: value }) => (
              <li>
                <button type="button" class="act" disabled={!book.writable()} onClick={() => put(value)}>
                  {say('page.study.solve.put', {
                    value: inputText(value),
                    scenario: book.scenario(props.scenario)?.name ?? '',
                  })}
                </button>
                <button type="button" class="act" disabled={!book.writable()} onClick={() => putNew(value)}>
                  {say('page.study.solve.put_new', { value: inputText(value) })}
                </button>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <Show when={!found() && props.solved.nearest}>
        {(nearest) => (
          <p>
            {say('page.study.solve.nearest', {
              value: output().text(nearest().output),
              at: `${input().label} ${input().text(nearest().input)}`,
            })}
          </p>
        )}
      </Show>
      <For each={props.solved.jumps}>
        {({ at, before, after }) => (
          <p>
            {say('page.study.solve.jump', {
              at: `${input().label} ${inputText(at)}`,
              before: output().text(before),
              after: output().text(after),
            })}
          </p>
        )}
      </For>
      <h3>{say('page.study.solve.ends')}</h3>
      <dl class="ends">
        <For each={[props.order.from, props.order.to]}>
          {(end, i) => (
            <div>
              <dt>{say('page.study.solve.end', { input: input().label, value: input().text(end) })}</dt>
              <dd>{answerText(props.solved.ends[i() === 0 ? 0 : 1])}</dd>
            </div>
          )}
        </For>
      </dl>
      <Show when={props.solved.silent.length > 0}>
        <h3>{say('page.study.gaps')}</h3>
        <ul class="gaps">
          <For each={props.solved.silent}>
            {({ from, to, why }) => (
              <li>
                {say('page.study.solve.silent', {
                  span: say('page.study.interval', { low: input().figure(from), high: input().text(to) }),
                  why: answerText({ problem: why }),
                })}
              </li>
            )}
          </For>
        </ul>
      </Show>
    </section>
  )
}

/** A value found, in all the figures that it needs to give what is wanted. */
function exact(value: number, canonical: string, unit: string): string {
  const shown = convert(value, canonical, unit)
  const figure = isProblem(shown) ? value : shown
  const decimals = Math.min(12, Number(figure.toPrecision(9)).toString().split('.')[1]?.length ?? 0)
  return formatValue(value, canonical, unit, undefined) === '' ? '' : formatValue(figure, unit, unit, decimals)
}
