import { createSignal, For, Show } from 'solid-js'
import { changeable, type RuleValue } from '../../planner/changeRules'
import { RULES } from '../../planner/rules'
import { parseEntry } from '../../units/parseEntry'
import { isProblem, type Problem, problem } from '../../words/problem'
import { say, sentence } from '../../words/say'
import { numberText } from '../../words/written'
import { labelInside } from '../labelOf'
import { ruleValueLabel } from '../plan/planSentence'
import { useBook } from '../shell/book'
import { unitWords } from '../unitWords'

/** The plan's rules, each value with its bounds and basis, to be changed for this notebook. */
export function RuleValues() {
  const book = useBook()
  const [fault, setFault] = createSignal<{ readonly key: string; readonly problem: Problem } | null>(null)
  const changes = () => book.notebook().rules
  const values = changeable()
  const ofRules = values.filter(({ rule }) => rule !== 'test_errors')
  const ofTests = values.filter(({ rule }) => rule === 'test_errors')

  const unitOf = ({ unit, name }: RuleValue) =>
    unit === '' ? (book.catalog().quantities.get(name)?.row.unit ?? '1') : unit
  const label = (one: RuleValue) =>
    one.rule === 'test_errors'
      ? say('page.rules.test_error', { quantity: labelInside(one.name, book.catalog().quantities.get(one.name)?.row) })
      : ruleValueLabel(one.key)
  const now = (one: RuleValue) => changes()[one.key] ?? one.value

  function set(one: RuleValue, typed: string): boolean {
    const unit = unitOf(one)
    const entry = parseEntry(typed, unit, { profile: book.notebook().profile, displayed: unit })
    if (entry === null || entry === 'not_taken') return put(one, null)
    if (isProblem(entry)) return refuse(one, { ...entry, path: [label(one)] })
    const value = entry.canonical
    if (value < one.least - 1e-9 || value > one.most + 1e-9) {
      return refuse(one, problem('rule_outside', [label(one)], { found: value, least: one.least, most: one.most }))
    }
    return put(one, Math.abs(value - one.value) < 1e-12 ? null : value)
  }

  function put({ key }: RuleValue, value: number | null): boolean {
    const trouble = book.dispatch({ type: 'set_rule', rule: key, value })
    setFault(trouble ? { key, problem: trouble } : null)
    return trouble === null
  }

  function refuse({ key }: RuleValue, trouble: Problem): false {
    setFault({ key, problem: trouble })
    return false
  }

  const table = (list: readonly RuleValue[], name: string) => (
    <table aria-label={name}>
      <thead>
        <tr>
          <th scope="col">{say('page.rules.rule')}</th>
          <th scope="col">{say('page.rules.value')}</th>
          <th scope="col">{say('page.rules.may_be')}</th>
          <th scope="col">{say('page.rules.basis')}</th>
          <td />
        </tr>
      </thead>
      <tbody>
        <For each={list}>
          {(one) => (
            <tr>
              <th scope="row">{label(one)}</th>
              <td>
                <input
                  class="field"
                  disabled={!book.writable()}
                  aria-label={label(one)}
                  value={written(now(one))}
                  onChange={(event) => {
                    const input = event.currentTarget
                    set(one, input.value)
                    input.value = written(now(one))
                  }}
                />{' '}
                <span class="quiet">{unitWords(unitOf(one))}</span>
              </td>
              <td class="quiet">{say('page.rules.span', { least: written(one.least), most: written(one.most) })}</td>
              <td class="source">
                <Show when={fault()?.key === one.key && fault()?.problem}>
                  {(trouble) => (
                    <p class="warm" role="alert">
                      {sentence(trouble())}
                    </p>
                  )}
                </Show>
                <Show when={one.key in changes()}>
                  <p>{say('page.rules.changed', { shipped: written(one.value) })}</p>
                </Show>
                <p class="quiet">{RULES.rules.get(one.rule)?.basis}</p>
              </td>
              <td>
                <Show when={one.key in changes()}>
                  <button
                    type="button"
                    class="act"
                    disabled={!book.writable()}
                    aria-label={say('page.rules.back_of', { rule: label(one) })}
                    onClick={() => put(one, null)}
                  >
                    {say('page.rules.back')}
                  </button>
                </Show>
              </td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  )

  return (
    <section>
      <h2>{say('page.rules')}</h2>
      <p class="intro">{say('page.rules.intro')}</p>
      <Show when={Object.keys(changes()).length > 0}>
        <div class="acts">
          <button
            type="button"
            class="act"
            disabled={!book.writable()}
            onClick={() =>
              book.dispatch({
                type: 'together',
                edits: Object.keys(changes()).map((rule) => ({ type: 'set_rule', rule, value: null }) as const),
              })
            }
          >
            {say('page.rules.all_back')}
          </button>
        </div>
      </Show>
      {table(ofRules, say('page.rules'))}
      <h3>{say('page.rules.tests')}</h3>
      {table(ofTests, say('page.rules.tests'))}
    </section>
  )
}

/** A value of a rule, to at most three places. */
function written(value: number): string {
  return numberText(value, { maximumFractionDigits: 3 })
}
