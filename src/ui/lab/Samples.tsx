import { createMemo, createSignal, For, Show } from 'solid-js'
import { say } from '../../words/say'
import { labelOf } from '../labelOf'
import { Switch } from '../rail/Switch'
import { useBook } from '../shell/book'
import { unitWords } from '../unitWords'
import type { Censored, Chosen } from './scenariosFrom'

/** The samples that were read; the chosen ones become scenarios. */
export function Samples(props: {
  samples: readonly Chosen[]
  /** in the whole file */
  count: number
  censored: boolean
  onTake: (chosen: readonly Chosen[], options: { elsewhere: boolean; censored: Censored }) => void
}) {
  const book = useBook()
  const [chosen, setChosen] = createSignal<ReadonlySet<number>>(new Set())
  const [elsewhere, setElsewhere] = createSignal(true)
  const [censored, setCensored] = createSignal<Censored>('leave_out')
  const quantities = createMemo(() => [...new Set(props.samples.flatMap(({ sample }) => Object.keys(sample.readings)))])
  const all = () => chosen().size === props.samples.length

  function toggle(row: number): void {
    const next = new Set(chosen())
    if (!next.delete(row)) next.add(row)
    setChosen(next)
  }

  const cell = ({ sample }: Chosen, quantity: string) => {
    const reading = sample.readings[quantity]
    if (!reading) return ''
    if (reading.kind === 'choice') return reading.id
    if (reading.kind === 'censored') return reading.entered
    const canonical = book.catalog().quantities.get(quantity)?.row.unit
    const figure = reading.entered.replace('-', '\u2212')
    return reading.unit === canonical ? figure : `${figure} ${unitWords(reading.unit)}`
  }

  return (
    <section>
      <h2>{say('page.lab.samples')}</h2>
      <p class="intro">{say('page.lab.samples_intro')}</p>
      <div class="wide">
        <table class="samples">
          <thead>
            <tr>
              <th scope="col">
                <input
                  type="checkbox"
                  aria-label={say('page.lab.choose_all')}
                  checked={all()}
                  onChange={() => setChosen(all() ? new Set<number>() : new Set(props.samples.map(({ row }) => row)))}
                />
              </th>
              <th scope="col">{say('page.lab.col.row')}</th>
              <th scope="col">{say('page.lab.role.sample')}</th>
              <th scope="col">{say('page.lab.role.date')}</th>
              <For each={quantities()}>{(quantity) => <th scope="col">{labelOf(quantity)}</th>}</For>
            </tr>
          </thead>
          <tbody>
            <For each={props.samples}>
              {(one) => (
                <tr>
                  <td>
                    <input
                      type="checkbox"
                      aria-label={say('page.lab.choose_row', { row: one.row, name: one.sample.name })}
                      checked={chosen().has(one.row)}
                      onChange={() => toggle(one.row)}
                    />
                  </td>
                  <td class="quiet">{one.row}</td>
                  <th scope="row">{one.sample.name}</th>
                  <td class="quiet">{one.sample.date}</td>
                  <For each={quantities()}>{(quantity) => <td class="figure">{cell(one, quantity)}</td>}</For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <Show when={props.count > props.samples.length}>
        <p class="quiet">{say('page.lab.more', { shown: props.samples.length, count: props.count })}</p>
      </Show>
      <Switch<'elsewhere' | 'here'>
        label={say('page.lab.whose')}
        value={elsewhere() ? 'elsewhere' : 'here'}
        options={[
          ['elsewhere', say('page.lab.whose.elsewhere')],
          ['here', say('page.lab.whose.here', { name: book.notebook().name })],
        ]}
        onChange={(value) => setElsewhere(value === 'elsewhere')}
      />
      <Show when={props.censored}>
        <Switch<Censored>
          label={say('page.lab.censored')}
          value={censored()}
          options={[
            ['leave_out', say('page.lab.censored.leave_out')],
            ['limit', say('page.lab.censored.limit')],
            ['half', say('page.lab.censored.half')],
          ]}
          onChange={setCensored}
        />
      </Show>
      <div class="acts">
        <button
          type="button"
          class="act main"
          disabled={chosen().size === 0 || !book.writable()}
          onClick={() =>
            props.onTake(
              props.samples.filter(({ row }) => chosen().has(row)),
              { elsewhere: elsewhere(), censored: censored() },
            )
          }
        >
          {say('page.lab.take', { count: chosen().size })}
        </button>
      </div>
    </section>
  )
}
