import { createMemo, createSignal, For, Show } from 'solid-js'
import type { Precision } from '../../notebook/notebook'
import { exactnessOf } from '../../study/doubtsOf'
import { methodsOf } from '../../study/methods'
import { restsOn } from '../../study/restsOn'
import { convertDifference } from '../../units/convert'
import { parseEntry } from '../../units/parseEntry'
import { isProblem, type Problem, problem } from '../../words/problem'
import { say } from '../../words/say'
import { labelOf } from '../labelOf'
import { Problems } from '../notebooks/Problems'
import { useBook } from '../shell/book'
import { Wide } from '../shell/Wide'
import { unitWords } from '../unitWords'
import { volumeIn } from '../volumeIn'
import { methodsIn } from './bookDoubts'
import { halfFigure } from './halfText'
import { studyColumn } from './studyColumn'

/** How exact the readings behind a result are: by which test, within how much, on whose word. */
export function Precisions(props: { scenario: string; output: string }) {
  const book = useBook()
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const names = createMemo(() => {
    const column = studyColumn(book, props.scenario, [props.output])
    return [...restsOn(book.catalog(), props.output)].filter((name) => {
      const own = Object.hasOwn(book.notebook().precisions, name)
      return column !== null && typeof column.get(name) === 'number' && (own || methodsOf(name).length > 0)
    })
  })
  const methods = createMemo(() => methodsIn(book, props.scenario, new Set(names())))
  // an assumed volume has no interval, unless its ends were said too
  const restsOnVolume = createMemo(() => {
    const volume = restsOn(book.catalog(), props.output).has('volume') ? volumeIn(book, props.scenario) : null
    return volume !== null && volume.low < volume.high
  })
  const label = (name: string) => labelOf(name, book.catalog().quantities.get(name)?.row)

  function set(quantity: string, precision: Precision | null): void {
    const refused = book.dispatch({ type: 'set_precision', quantity, precision })
    setProblems(refused ? [refused] : [])
  }

  /** A bare figure in the unit that the row is shown in; nothing at all goes back to the test's. */
  function enter(name: string, text: string): void {
    const unit = book.unit(name)
    const row = book.catalog().quantities.get(name)?.row
    const entry = parseEntry(text, '1', { profile: book.notebook().profile, displayed: '1' })
    if (entry === null || entry === 'not_taken' || !row) {
      set(name, null)
      return
    }
    const canonical = isProblem(entry) ? entry : convertDifference(entry.canonical, unit, row.unit)
    if (isProblem(canonical)) setProblems([{ ...canonical, path: [label(name)] }])
    else if (canonical < 0) setProblems([problem('study_precision_negative', [label(name)])])
    else if (!isProblem(entry)) set(name, { kind: 'value', entered: entry.entered, unit, canonical })
  }

  return (
    <Show when={names().length > 0 || restsOnVolume()}>
      <section>
        <h2>{say('page.study.precisions')}</h2>
        <p class="intro">{say('page.study.precisions.says')}</p>
        <Problems problems={problems()} />
        <Wide label={say('page.study.precisions')}>
          <table class="precisions">
            <thead>
              <tr>
                <th scope="col">{say('page.study.precision.reading')}</th>
                <th scope="col">{say('page.study.precision.test')}</th>
                <th scope="col">{say('page.study.precision.half')}</th>
                <th scope="col">{say('page.study.precision.source')}</th>
              </tr>
            </thead>
            <tbody>
              <For each={names()}>
                {(name) => {
                  const precision = () =>
                    Object.hasOwn(book.notebook().precisions, name) ? book.notebook().precisions[name] : undefined
                  const value = () => Number(studyColumn(book, props.scenario, [props.output])?.get(name) ?? 0)
                  const exact = () => exactnessOf(name, value(), precision(), methods().get(name))
                  const test = () => {
                    const by = exact()?.by
                    return by?.kind === 'test' ? by.test : null
                  }
                  return (
                    <tr>
                      <th scope="row">{label(name)}</th>
                      <td>
                        <select
                          class="field"
                          aria-label={say('page.study.precision.test_of', { name: label(name) })}
                          disabled={!book.writable()}
                          onChange={(event) => {
                            const { value: method } = event.currentTarget
                            if (method !== '') set(name, { kind: 'method', method })
                          }}
                        >
                          <Show when={test() === null}>
                            <option value="" selected>
                              {say('page.study.precision.own')}
                            </option>
                          </Show>
                          <For each={methodsOf(name)}>
                            {({ method }) => (
                              <option value={method} selected={test()?.method === method}>
                                {say(`method.${method}`)}
                              </option>
                            )}
                          </For>
                        </select>
                      </td>
                      <td class="half">
                        <input
                          class="field"
                          inputmode="decimal"
                          autocomplete="off"
                          aria-label={say('page.study.precision.half_of', { name: label(name) })}
                          disabled={!book.writable()}
                          value={halfFigure(book, name, exact()?.half ?? 0)}
                          onChange={(event) => enter(name, event.currentTarget.value)}
                        />{' '}
                        {unitWords(book.unit(name))}
                      </td>
                      <td class="quiet">
                        <Show when={test()} fallback={say('page.study.precision.yours')}>
                          {(known) => (
                            <>
                              {known().source} ({say(`page.study.mark.${known().mark}`)})
                            </>
                          )}
                        </Show>
                      </td>
                    </tr>
                  )
                }}
              </For>
              <Show when={restsOnVolume()}>
                <tr>
                  <th scope="row">{label('volume')}</th>
                  <td colspan={3} class="quiet">
                    {say('page.study.precision.volume')}
                  </td>
                </tr>
              </Show>
            </tbody>
          </table>
        </Wide>
      </section>
    </Show>
  )
}
