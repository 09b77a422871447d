import { For, Show } from 'solid-js'
import type { Told } from '../../planner/cases/standing'
import type { PlanCase } from '../../planner/step'
import { say } from '../../words/say'
import { labelInside } from '../labelOf'
import { planSentence, type Reader } from './planSentence'

/** What stands at the end of a case: when it is done, what not to do, and what it rests on. */
export function CaseEnds(props: { of: PlanCase; reader: Reader }) {
  return (
    <section class="case-end">
      <h2>{planSentence(props.reader, props.of.label)}</h2>
      <Show when={props.of.done.length > 0}>
        <h3>{say('page.cases.done')}</h3>
        <ul class="lines">
          <For each={props.of.done}>
            {(end) => (
              <li>
                <span>{planSentence(props.reader, end.says)}</span>
                <span class="quiet">{toldWords(props.reader, end.told)}</span>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <Show when={props.of.forbids.length > 0}>
        <h3>{say('page.cases.forbids')}</h3>
        <ul class="plain">
          <For each={props.of.forbids}>{(one) => <li>{planSentence(props.reader, one)}</li>}</For>
        </ul>
      </Show>
      <details>
        <summary>{say('page.cases.sources')}</summary>
        <ul>
          <For each={props.of.sources}>
            {({ mark, says }) => (
              <li>
                {says} ({say(`page.cases.mark.${mark}`)})
              </li>
            )}
          </For>
        </ul>
      </details>
    </section>
  )
}

function toldWords(reader: Reader, told: Told): string {
  if (told.truth !== 'unknown') return say(`page.cases.told.${told.truth}`)
  if (told.names.length === 0) return say('page.cases.told.unclear')
  const readings = told.names.map((names) => {
    const [name = names] = names.split('|')
    return labelInside(name, reader.catalog.quantities.get(name)?.row)
  })
  return say('page.cases.told.unknown', { readings })
}
