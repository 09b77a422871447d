import '../look/plan.css'
import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js'
import { isForetold } from '../../notebook/foretold'
import type { PlanRecord } from '../../notebook/record'
import type { Plan, Step } from '../../planner/step'
import { cases } from '../../words/en/cases'
import { casesPool } from '../../words/en/cases-pool'
import { casesWater } from '../../words/en/cases-water'
import { pagePlan } from '../../words/en/page-plan'
import { planWords } from '../../words/en/plan'
import { planRules } from '../../words/en/plan-rules'
import { ruleValues } from '../../words/en/rule-values'
import { addWords, say } from '../../words/say'
import { AssumedNote } from '../assumptions/AssumedNote'
import { CarryPlanEnd } from '../carry/CarryPlanEnd'
import { labelOf } from '../labelOf'
import { Problems } from '../notebooks/Problems'
import { createKept } from '../record/createKept'
import { KeepPlan } from '../record/KeepPlan'
import { StepDone } from '../record/StepDone'
import { useBook } from '../shell/book'
import { placeLink, usePlace } from '../shell/place'
import { CaseEnds } from './CaseEnds'
import { Cases } from './Cases'
import { createPlan } from './createPlan'
import { money, planSentence, problemSentence, quantityWords, type Reader } from './planSentence'
import { Shelf } from './Shelf'
import { StepView } from './StepView'
import { type Untested, untested } from './untested'

addWords({ ...cases, ...casesPool, ...casesWater, ...pagePlan, ...planWords, ...planRules, ...ruleValues })

/** The step plan of one scenario: may people swim, what was found, what to do and when, what is left open. */
export function PlanPage() {
  const book = useBook()
  const place = usePlace()
  const [chosen, setChosen] = createSignal<string | null>(place().part ?? book.selection.cell()?.scenario ?? null)
  const scenario = createMemo(() => {
    const wanted = chosen()
    return wanted !== null && book.scenarios().includes(wanted) ? wanted : book.baseline()
  })
  const { planned, column, cases, refused } = createPlan(book, scenario)
  const plan = (): Plan | null => {
    const now = planned()
    return typeof now === 'string' ? null : now
  }
  const reader = createMemo(
    (): Reader => ({
      catalog: book.catalog(),
      profile: book.notebook().profile,
      unit: book.unit,
      water: column() ?? new Map(),
      changes: book.notebook().rules,
    }),
  )
  const record = createKept(plan, scenario, column, reader)
  const first = () => untested(book, scenario(), new Date())

  return (
    <article class="text-page plan" aria-busy={planned() === 'making'}>
      <h1>{say('page.title.plan')}</h1>
      <p class="intro">{say('page.plan.intro')}</p>
      <div class="acts">
        <label>
          {say('page.plan.scenario')}
          <select class="field" onChange={(event) => setChosen(event.currentTarget.value)}>
            <For each={book.scenarios()}>
              {(id) => (
                <option value={id} selected={id === scenario()}>
                  {book.scenario(id)?.name}
                </option>
              )}
            </For>
          </select>
        </label>
        <a class="act" href={placeLink({ page: 'worksheets', part: 'plan' })}>
          {say('page.plan.beforehand')}
        </a>
        <a class="act" href={placeLink({ page: 'handout', part: scenario() })}>
          {say('page.plan.handout')}
        </a>
        <button type="button" class="act" onClick={() => print()}>
          {say('page.print')}
        </button>
      </div>
      <Cases scenario={scenario()} cases={cases()} asks={(plan()?.cases ?? []).flatMap(({ asks }) => asks)} />
      <Shelf />
      <Problems problems={refused()} />
      <Switch>
        <Match when={planned() === 'making'}>
          <p class="quiet">{say('page.plan.making')}</p>
        </Match>
        <Match when={planned() === 'none'}>
          <p class="warm">{say('page.plan.none')}</p>
        </Match>
        <Match when={plan()}>
          {(now) => (
            <>
              <AssumedNote scenario={scenario()} />
              <Planned plan={now()} reader={reader()} kept={record.kept()} untested={first()} />
              <Show when={!isForetold(book.scenario(scenario()))}>
                <KeepPlan record={record} />
              </Show>
              <CarryPlanEnd plan={now()} scenario={scenario()} />
            </>
          )}
        </Match>
      </Switch>
    </article>
  )
}

function Planned(props: { plan: Plan; reader: Reader; kept: PlanRecord | null; untested: Untested | null }) {
  const words = (one: { key: string; facts: Step['says']['facts'] }) => planSentence(props.reader, one)
  const swim = () => {
    if (props.plan.swim.now !== 'yes') return 'plan.swim.no'
    return props.untested === null ? 'plan.swim.yes' : 'plan.swim.stale'
  }
  const days = createMemo(() => byDay(props.plan.steps))
  const found = () => props.plan.verdicts.filter(({ verdict }) => verdict === 'step' || verdict === 'test_again')
  const alone = () => props.plan.verdicts.filter(({ verdict }) => verdict === 'nothing')
  const spared = () => props.plan.verdicts.filter(({ verdict }) => verdict === 'do_not_buy')
  const leftOut = () => props.plan.verdicts.filter(({ verdict }) => verdict === 'left_out')
  const name = (quantity: string) => labelOf(quantity, props.reader.catalog.quantities.get(quantity)?.row)

  return (
    <>
      <section class="swim">
        <h2>{say(swim())}</h2>
        <Show when={props.untested}>{(why) => <p>{say(why().key, why().facts)}</p>}</Show>
        <For each={props.plan.swim.reasons}>{(reason) => <p>{words(reason)}</p>}</For>
        <Show when={props.plan.swim.after}>{(step) => <p>{say('plan.swim.after', { step: step() })}</p>}</Show>
      </section>
      <Verdicts title={say('page.plan.found')} verdicts={found()} name={name} words={words} />
      <Show
        when={props.plan.steps.length > 0}
        fallback={<p class="says">{say(props.plan.complete ? 'page.plan.empty' : 'page.plan.nothing_yet')}</p>}
      >
        <For each={days()}>
          {({ day, steps, first }) => (
            <section>
              <h2>{dayWords(day)}</h2>
              <ol class="steps" start={first}>
                <For each={steps}>
                  {(step, i) => (
                    <StepView step={step} number={first + i()} reader={props.reader}>
                      <Show when={props.kept}>{(kept) => <StepDone plan={kept().id} at={first + i() - 1} />}</Show>
                    </StepView>
                  )}
                </For>
              </ol>
            </section>
          )}
        </For>
      </Show>
      <For each={props.plan.cases}>{(of) => <CaseEnds of={of} reader={props.reader} />}</For>
      <Show when={props.plan.unmet.length > 0}>
        <section>
          <h2>{say('page.plan.unmet')}</h2>
          <ul class="lines">
            <For each={props.plan.unmet}>
              {({ quantity, problem }) => <li>{problemSentence(problem, name(quantity))}</li>}
            </For>
          </ul>
        </section>
      </Show>
      <Verdicts title={say('page.plan.alone')} verdicts={alone()} name={name} words={words} />
      <Verdicts title={say('page.plan.spared')} verdicts={spared()} name={name} words={words} />
      <Verdicts title={say('page.plan.left_out')} verdicts={leftOut()} name={name} words={words} />
      <Show when={props.plan.cost !== undefined}>
        <p>{say('page.plan.cost_sum', { cost: money(props.plan.cost ?? 0) })}</p>
      </Show>
      <p class="quiet">
        {say('page.plan.holds_for', {
          volume: quantityWords(props.reader, 'volume', Number(props.plan.end.get('volume') ?? 0)),
        })}
      </p>
    </>
  )
}

function Verdicts(props: {
  title: string
  verdicts: Plan['verdicts']
  name: (quantity: string) => string
  words: (one: { key: string; facts: Step['says']['facts'] }) => string
}) {
  return (
    <Show when={props.verdicts.length > 0}>
      <section>
        <h2>{props.title}</h2>
        <ul class="lines">
          <For each={props.verdicts}>
            {({ quantity, reason }) => (
              <li>
                <span class="name">{props.name(quantity)}</span>
                <span>{props.words({ key: reason.key, facts: { quantity, ...reason.facts, reading: quantity } })}</span>
              </li>
            )}
          </For>
        </ul>
      </section>
    </Show>
  )
}

interface Day {
  /** 0 today */
  readonly day: number
  readonly steps: readonly Step[]
  /** the number of its first step */
  readonly first: number
}

/** Steps by the day on which they start. */
function byDay(steps: readonly Step[]): readonly Day[] {
  const days = new Map<number, Step[]>()
  for (const step of steps) {
    const day = Math.floor(step.at / 24)
    days.set(day, [...(days.get(day) ?? []), step])
  }
  let first = 1
  return [...days].map(([day, of]) => {
    const one = { day, steps: of, first }
    first += of.length
    return one
  })
}

function dayWords(day: number): string {
  if (day === 0) return say('page.plan.today')
  return day === 1 ? say('page.plan.tomorrow') : say('page.plan.in_days', { days: day })
}
