import { createMemo, For, Show } from 'solid-js'
import type { GivenStep, PlanRecord } from '../../notebook/record'
import versions from '../../planner/versions.build'
import type { Outcome } from '../../record/foretold'
import { type Moved, moved } from '../../record/moved'
import { hasWords, say } from '../../words/say'
import type { RecordView } from './createRecord'
import { OutcomeView } from './OutcomeView'
import { StepDone } from './StepDone'

/** A plan as it was given: its own words, what of it is done, what came of it, and what has moved since. */
export function GivenPlanView(props: { view: RecordView; plan: PlanRecord; outcome: Outcome | undefined }) {
  const changed = createMemo(() => moved(props.plan.versions, versions))
  const steps = () => props.plan.steps
  return (
    <>
      <p class="name">{say(props.plan.swim.now === 'yes' ? 'plan.swim.yes' : 'plan.swim.no')}</p>
      <p class="quiet">
        {say('record.plan.scenario', { scenario: props.plan.scenario })}{' '}
        {props.plan.sample === null ? say('record.plan.supposed') : ''}
      </p>
      <Show when={changed().length > 0}>
        <p class="warm">{say('record.plan.moved', { names: changed().map(movedWords) })}</p>
      </Show>
      <details>
        <summary>
          {steps().length > 0 ? say('record.plan.steps', { count: steps().length }) : say('record.plan.no_steps')}
        </summary>
        <For each={props.plan.swim.says}>{(line) => <p>{line}</p>}</For>
        <ol class="given-steps">
          <For each={steps()}>{(step, at) => <StepLine plan={props.plan} step={step} at={at()} />}</For>
        </ol>
        <ul class="causes">
          <For each={props.plan.verdicts}>
            {(one) => (
              <li>
                <span class="name">{props.view.label(one.quantity)}</span> {one.says}
              </li>
            )}
          </For>
        </ul>
      </details>
      <Show when={props.outcome}>
        {(outcome) => (
          <details>
            <summary>{say('record.outcome')}</summary>
            <OutcomeView view={props.view} outcome={outcome()} />
          </details>
        )}
      </Show>
    </>
  )
}

function StepLine(props: { plan: PlanRecord; step: GivenStep; at: number }) {
  return (
    <li>
      <p>{props.step.says}</p>
      <For each={[...props.step.how, ...props.step.cautions]}>{(line) => <p class="quiet">{line}</p>}</For>
      <StepDone plan={props.plan.id} at={props.at} />
    </li>
  )
}

function movedWords({ name, was, is }: Moved): string {
  const worksheet = name.startsWith('worksheet:') ? name.slice('worksheet:'.length) : null
  const key = `worksheet.${worksheet}.label`
  const words =
    name === 'rules'
      ? say('record.plan.moved_rules')
      : worksheet === null
        ? name
        : say('record.plan.moved_worksheet', { name: hasWords(key) ? say(key) : worksheet })
  return is === null
    ? say('record.plan.moved_gone', { name: words, was })
    : say('record.plan.moved_one', { name: words, was, is })
}
