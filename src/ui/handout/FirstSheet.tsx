import { For, Show } from 'solid-js'
import { instant } from '../../record/instant'
import { say } from '../../words/say'
import { dayWords } from '../desk/when'
import { quantityWords, type Reader } from '../plan/planSentence'
import { testedOn } from '../plan/testedOn'
import { useBook } from '../shell/book'
import { shownValue } from '../shownValue'
import { isTypedOver, volumeIn } from '../volumeIn'
import { isFull, pagesOf } from './pagesOf'
import type { Sheet, SheetDay, SheetStep } from './sheet'

const STOP = ['water', 'smell', 'alarm', 'level'] as const

/** Cautions with fewer characters stand in the line, in a box. */
const BRIEF = 60

/** What the customer takes home, in the order in which it is needed. */
export function FirstSheet(props: { sheet: Sheet; scenario: string; store: string; note: string; reader: Reader }) {
  const book = useBook()
  const volume = () => shownValue(book, props.scenario, 'volume')
  const volumeWords = () => {
    const given = book.source(props.scenario, 'measured_volume').cell?.kind === 'value'
    const how = given || isTypedOver(book, props.scenario, 'volume') ? 'entered' : 'shape'
    const { low, high } = volumeIn(book, props.scenario) ?? { low: 0, high: 0 }
    if (low === high) return say(`handout.volume.${how}`, { volume: volume() })
    return say(`handout.volume.${how}_span`, {
      volume: volume(),
      low: quantityWords(props.reader, 'volume', low),
      high: quantityWords(props.reader, 'volume', high),
    })
  }
  const sampleWords = () => {
    const day = new Date(instant(testedOn(book, props.scenario)))
    if (Number.isNaN(day.getTime())) return say('handout.sample.none')
    const age = shownValue(book, props.scenario, 'sample_age')
    return say(age === '' ? 'handout.sample.date' : 'handout.sample.date_age', { date: dayWords(day), age })
  }
  const pages = () => pagesOf(props.sheet)

  return (
    <section class="sheet first" classList={{ full: isFull(props.sheet) }} aria-label={say('page.title.handout')}>
      <header>
        <p class="store">{props.store}</p>
        <h2 class="swims">{props.sheet.swim}</h2>
        <p class="why">{props.sheet.swimWhy.join(' ')}</p>
        <p class="whose">
          <strong>{book.notebook().name}</strong>
          <Show when={book.notebook().place}>{(place) => <span>{place()}</span>}</Show>
          <span>{volumeWords()}</span>
          <span>{sampleWords()}</span>
        </p>
      </header>

      <section class="found">
        <h3>{say('handout.found')}</h3>{' '}
        <ul>
          <Show when={props.sheet.cases.length > 0}>
            <li>{say('handout.case', { names: props.sheet.cases })} </li>
          </Show>
          <For each={props.sheet.found}>{(sentence) => <li>{sentence} </li>}</For>
          <Show when={props.sheet.foundMore.length > 0}>
            <li>{say('handout.found.more', { count: props.sheet.foundMore.length })} </li>
          </Show>
        </ul>
        <Show when={props.sheet.alone !== '' || props.sheet.spared.length > 0}>
          <p>{[props.sheet.alone, ...props.sheet.spared].join(' ').trim()}</p>
        </Show>
      </section>

      <Show
        when={props.sheet.days.length > 0}
        fallback={
          <p class="says">{say(props.sheet.left.length > 0 ? 'handout.nothing_yet' : 'handout.nothing_to_do')}</p>
        }
      >
        <Show when={props.sheet.together.length > 0}>
          <p class="together">{props.sheet.together.join(' ')}</p>
        </Show>
        <For each={pages()}>
          {(days, page) => (
            <div class="leaf">
              <For each={days}>
                {(day) => (
                  <section class="day">
                    <h3>{day.title}</h3>
                    <ol>
                      <For each={day.steps}>{(step) => <StepLine step={step} />}</For>
                    </ol>
                  </section>
                )}
              </For>
              <Show when={stepsAfter(pages(), page())}>{(steps) => <p class="overleaf">{steps()}</p>}</Show>
            </div>
          )}
        </For>
      </Show>

      <div class="foot-of-sheet">
        <Show when={props.sheet.done.length > 0}>
          <section class="over">
            <h3>{say('handout.done_when')}</h3>{' '}
            <ul>
              <For each={props.sheet.done}>{(sign) => <li>{sign} </li>}</For>
            </ul>
          </section>
        </Show>
        <section class="never">
          <For each={props.sheet.never}>{(sentence) => <p>{sentence}</p>}</For>
        </section>
        <div class="halves">
          <section class="stop">
            <h3>{say('handout.stop')}</h3>{' '}
            <ul>
              <For each={STOP}>
                {(sign, at) => <li>{`${say(`handout.stop.${sign}`)}${at() < STOP.length - 1 ? ' ' : '.'}`}</li>}
              </For>
            </ul>{' '}
            <p>{say('handout.stop.first_aid')}</p>
          </section>
          <section class="retest">
            <h3>{say('handout.retest')}</h3> <For each={props.sheet.retest}>{(sentence) => <p>{sentence} </p>}</For>
          </section>
        </div>
        <Show when={props.note.trim()}>{(note) => <p class="note">{note()}</p>}</Show>
        <p class="law">
          {say('handout.label_first', { volume: volume() })} {say('handout.electric')}
        </p>
      </div>
    </section>
  )
}

/** What stands on the pages after this one; nothing on the last. */
function stepsAfter(pages: readonly (readonly SheetDay[])[], page: number): string {
  const numbers = pages
    .slice(page + 1)
    .flatMap((days) => days.flatMap(({ steps }) => steps.map(({ number }) => number)))
  const [first, last] = [numbers[0], numbers.at(-1)]
  if (first === undefined || last === undefined) return ''
  return say('handout.overleaf', { count: numbers.length, steps: first === last ? `${first}` : `${first} – ${last}` })
}

/** A step reads on from its bold sentence; what is dangerous in it stands in a box, under it or, where it is short, in the line. */
function StepLine(props: { step: SheetStep }) {
  const rest = () =>
    [props.step.label, ...props.step.how, ...props.step.state].filter((words) => words !== '').join(' ')
  return (
    <li
      class="step"
      classList={{ pause: props.step.pause, brief: props.step.cautions.join(' ').length < BRIEF }}
      value={props.step.number}
    >
      <span class="number" aria-hidden="true">
        {props.step.number}
      </span>
      <Show when={props.step.tick} fallback={<span class="no-box" />}>
        <input type="checkbox" class="box" aria-label={say('handout.done', { number: props.step.number })} />
      </Show>
      <div class="what">
        <p class="says">
          <span class="when">{props.step.when}</span> {props.step.says}
        </p>{' '}
        <p class="rest">
          {rest()} <span class="wait">{props.step.wait}</span>
        </p>{' '}
        <Show when={props.step.cautions.length > 0}>
          <ul class="care" aria-label={say('handout.caution')}>
            <For each={props.step.cautions}>{(caution) => <li>{caution} </li>}</For>
          </ul>
        </Show>
      </div>
    </li>
  )
}
