import { createUniqueId, For, Show } from 'solid-js'
import type { DateOrder } from '../../intake/dates'
import type { Answers, ColumnAnswer, Question } from '../../intake/understanding'
import { hasWords, say } from '../../words/say'
import { labelOf } from '../labelOf'
import { unitWords } from '../unitWords'

/** What the file leaves open. Nothing is read in before it is answered. */
export function Questions(props: {
  questions: readonly Question[]
  onAnswer: (change: Partial<Answers>) => void
  onColumn: (heading: string, answer: ColumnAnswer) => void
}) {
  function answer({ code, heading }: Question, choice: string): void {
    if (code === 'decimal_mark') props.onAnswer({ decimal: choice === ',' ? ',' : '.' })
    else if (code === 'date_order') props.onAnswer({ dates: choice as DateOrder })
    else if (heading !== null) {
      props.onColumn(heading, code === 'which_unit' ? { unit: choice } : { quantity: choice })
    }
  }
  const words = ({ code }: Question, choice: string) => {
    if (code === 'which_quantity') return labelOf(choice)
    if (code === 'which_unit') return unitWords(choice) || choice
    const key = `intake.choice.${choice}`
    return hasWords(key) ? say(key) : choice
  }
  return (
    <Show when={props.questions.length > 0}>
      <section class="questions">
        <h2>{say('page.lab.questions', { count: props.questions.length })}</h2>
        <For each={props.questions}>
          {(question) => {
            const name = createUniqueId()
            return (
              <fieldset class="switch">
                <legend>
                  {say(`intake.question.${question.code}`, { ...question.facts, heading: question.heading ?? '' })}
                </legend>
                <For each={question.choices}>
                  {(choice) => (
                    <label>
                      <input type="radio" name={name} onChange={() => answer(question, choice)} />{' '}
                      {words(question, choice)}
                    </label>
                  )}
                </For>
              </fieldset>
            )
          }}
        </For>
      </section>
    </Show>
  )
}
