import { createSignal, For, Show } from 'solid-js'
import { newId } from '../../notebook/create'
import type { Edit, SimpleEdit } from '../../notebook/edit'
import { darkLoss, isRefused, type Night, nightSays, usableVolume } from '../../record/night'
import { parseEntry } from '../../units/parseEntry'
import { isProblem, type Problem, problem } from '../../words/problem'
import { say } from '../../words/say'
import { Problems } from '../notebooks/Problems'
import type { RecordView } from './createRecord'
import { Proposal } from './Learning'
import { today } from './today'

const FIELDS = ['dusk', 'dawn', 'hours', 'setting', 'next_dusk', 'cell_hours'] as const
type Field = (typeof FIELDS)[number]

interface Finding {
  readonly what: string
  readonly more: string
  readonly edit: () => Edit
}

/** An overnight test: what the cell makes, or what the water uses up in the dark, as proposals. */
export function NightForm(props: { view: RecordView }) {
  const { book } = props.view
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const [findings, setFindings] = createSignal<readonly Finding[]>([])

  function workOut(event: SubmitEvent & { currentTarget: HTMLFormElement }): void {
    event.preventDefault()
    const form = new FormData(event.currentTarget)
    const wrong: Problem[] = []
    const figure = (name: Field): number | undefined => {
      const entry = parseEntry(String(form.get(name) ?? ''), '1', { profile: book.notebook().profile, displayed: '1' })
      if (isProblem(entry)) wrong.push({ ...entry, path: [say(`record.night.${name}`)] })
      return entry === null || entry === 'not_taken' || isProblem(entry) ? undefined : entry.canonical
    }
    const [dusk, dawn, hours, setting, nextDusk, cellHours] = FIELDS.map(figure)
    if (dusk === undefined || dawn === undefined || hours === undefined || setting === undefined) {
      if (wrong.length === 0) wrong.push(problem('record_night_incomplete'))
    } else if (wrong.length === 0) {
      const day = nextDusk === undefined || cellHours === undefined ? {} : { nextDusk, cellHours }
      const found = findingsOf(props.view, { dusk, dawn, hours, setting, ...day })
      if (isProblem(found)) wrong.push(found)
      else setFindings(found)
    }
    setProblems(wrong)
    if (wrong.length > 0) setFindings([])
  }

  return (
    <details class="night">
      <summary>{say('record.night')}</summary>
      <p class="quiet">{say('record.night.intro')}</p>
      <form class="write" onSubmit={workOut}>
        <For each={FIELDS}>
          {(name) => (
            <label>
              {say(`record.night.${name}`)}
              <input class="field" name={name} autocomplete="off" inputmode="decimal" />
            </label>
          )}
        </For>
        <button type="submit" class="act main">
          {say('record.night.do')}
        </button>
      </form>
      <Problems problems={problems()} />
      <For each={findings()}>
        {(one) => (
          <Proposal
            view={props.view}
            what={one.what}
            edit={one.edit}
            onTaken={() => setFindings((all) => all.filter((other) => other !== one))}
          >
            <Show when={one.more}>
              <p class="quiet">{one.more}</p>
            </Show>
          </Proposal>
        )}
      </For>
    </details>
  )
}

function findingsOf(view: RecordView, night: Night): readonly Finding[] | Problem {
  const { book, words } = view
  const error = view.errorOf()('free_chlorine', Math.max(night.dusk, night.dawn)) ?? 0
  const chlorine = (value: number) => words('free_chlorine', value)
  const inputs = {
    free_chlorine_dusk: night.dusk,
    free_chlorine_dawn: night.dawn,
    dark_hours: night.hours,
    cell_setting: night.setting,
  }
  const lesson = (values: Readonly<Record<string, number>>, note: string): SimpleEdit => ({
    type: 'put_lesson',
    lesson: { id: newId(), date: today(), kind: 'night', values: { ...inputs, ...values }, from: [], note },
  })
  if (night.setting === 0) {
    const loss = darkLoss(night, error)
    if (isRefused(loss)) return problem('record_night_refused')
    const what = say('record.night.loss', {
      value: chlorine(loss.value),
      low: chlorine(loss.low),
      high: chlorine(loss.high),
    })
    return [{ what, more: '', edit: () => lesson({ loss_in_the_dark: loss.value }, what) }]
  }
  const volume = view.number('volume')
  if (!usableVolume(volume)) return problem('record_night_no_volume')
  const known = lossIn(view)
  const says = nightSays(night, volume, error, known ?? 0)
  if (isRefused(says.output)) {
    return says.output.refused === 'within_error'
      ? problem('record_night_within_error', [], { rise: chlorine(night.dawn - night.dusk) })
      : problem('record_night_refused')
  }
  const { output, demand } = says
  const set = (quantity: string, unit: string, canonical: number): SimpleEdit => ({
    type: 'set_cell',
    scenario: book.baseline(),
    quantity,
    cell: {
      kind: 'value',
      entered: String(Number(canonical.toPrecision(3))),
      unit,
      canonical: Number(canonical.toPrecision(3)),
      method: say('record.learn.provenance', { date: today() }),
    },
  })
  const grams = (value: number) => words('cell_output_measured', value)
  const what = say('record.night.output', {
    value: grams(output.value),
    low: grams(output.low),
    high: grams(output.high),
  })
  const more = say(known === null ? 'record.night.output_least' : 'record.night.output_loss')
  const found: Finding[] = [
    {
      what,
      more,
      edit: () => ({
        type: 'together',
        edits: [
          set('cell_output_measured', 'g/h', output.value),
          lesson({ cell_output_measured: output.value, output_low: output.low, output_high: output.high }, what),
        ],
      }),
    },
  ]
  if (demand !== null && !isRefused(demand)) {
    const daily = (value: number) => words('chlorine_demand', value)
    found.push({
      what: say('record.night.demand', {
        value: daily(demand.value),
        low: daily(demand.low),
        high: daily(demand.high),
      }),
      more: '',
      edit: () => set('chlorine_demand', 'mg/L/day', demand.value),
    })
  }
  return found
}

/** What a night with the cell off told of the loss in the dark, mg/L an hour; null where there was none. */
function lossIn({ book }: RecordView): number | null {
  const nights = Object.values(book.notebook().lessons).filter(({ kind }) => kind === 'night')
  const last = nights
    .filter(({ values }) => values.loss_in_the_dark !== undefined)
    .sort((a, b) => a.date.localeCompare(b.date))
    .at(-1)
  return last?.values.loss_in_the_dark ?? null
}
