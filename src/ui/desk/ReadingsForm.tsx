import { For, Show } from 'solid-js'
import { say } from '../../words/say'
import { useBook } from '../shell/book'
import { AssumeCalcium } from './AssumeCalcium'
import { ChoiceField } from './ChoiceField'
import type { Asking } from './PoolEntry'
import { ReadingField } from './ReadingField'

/** As they come on the bench: chlorine first, which leaves the bottle while the rest is tested. */
const BENCH = [
  'free_chlorine',
  'total_chlorine',
  'ph',
  'total_alkalinity',
  'calcium_hardness',
  'cyanuric_acid',
  'salt',
  'cell_salt_reading',
] as const

const MORE = [
  'total_hardness',
  'borate',
  'copper',
  'iron',
  'manganese',
  'phosphate',
  'turbidity',
  'tds',
  'conductivity',
  'chloride',
  'magnesium',
  'sulfate',
  'ammonia',
  'orp',
  'bromine',
  'chlorine_sample_dilution',
] as const

/** At most so much free chlorine may be a test that was bleached, mg/L; what was seen is asked then. */
const MAY_BE_BLEACHED = 0.5

export function ReadingsForm(props: Asking) {
  const book = useBook()
  const free = () => book.source(book.baseline(), 'free_chlorine').cell
  const doubtful = () => {
    const cell = free()
    return cell?.kind === 'value' && cell.canonical <= MAY_BE_BLEACHED
  }
  return (
    <>
      <section class="readings">
        <h2>{say('page.desk.readings')}</h2>
        <For each={BENCH}>
          {(quantity) => (
            <ReadingField quantity={quantity} notes={props.notes(quantity)} asked={props.asks(quantity)} />
          )}
        </For>
        <details>
          <summary>{say('page.desk.more')}</summary>
          <For each={MORE}>
            {(quantity) => (
              <>
                <ReadingField quantity={quantity} notes={props.notes(quantity)} asked={props.asks(quantity)} />
                <Show when={quantity === 'total_hardness'}>
                  <AssumeCalcium />
                </Show>
              </>
            )}
          </For>
        </details>
      </section>
      <section>
        <h2>{say('page.desk.seen')}</h2>
        <Show when={doubtful()}>
          <ChoiceField quantity="chlorine_doubt" />
        </Show>
        <ChoiceField quantity="circulation" />
      </section>
    </>
  )
}
