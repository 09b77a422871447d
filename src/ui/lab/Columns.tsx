import { createMemo, For, Show } from 'solid-js'
import type { Known } from '../../intake/known'
import type { Column, ColumnAnswer, Understanding } from '../../intake/understanding'
import { unitsOfKind } from '../../units/unit'
import { say } from '../../words/say'
import { labelOf } from '../labelOf'
import { inSteps } from '../shell/inSteps'
import { Wide } from '../shell/Wide'
import { unitWords } from '../unitWords'
import { whyText } from './whyText'

const ROLES = ['sample', 'place', 'date', 'time', 'note'] as const

/** How each column was understood, and the way to say that it is something else. */
export function Columns(props: {
  understanding: Understanding
  known: readonly Known[]
  onAnswer: (heading: string, answer: ColumnAnswer) => void
}) {
  const columns = createMemo((): readonly Column[] => [...props.understanding.columns, ...props.understanding.analytes])
  const drawn = inSteps(columns, 3, 0)
  const example = (column: Column) =>
    props.understanding.preview.map(({ cells }) => cells[column.index] ?? '').find((text) => text.trim() !== '') ?? ''
  const meaning = (column: Column) => (column.role === 'quantity' ? (column.quantity ?? 'note') : column.role)

  // a unit that stands in the rows is the rows' own; an answer is for those without one, and for what it leaves open
  const isOpen = (column: Column) =>
    column.unitText === null ||
    props.understanding.columns.includes(column) ||
    column.why.some(({ code }) => code === 'among_ions') ||
    props.understanding.answers.columns?.[column.heading]?.unit === column.unit?.code

  function change(column: Column, chosen: string): void {
    const role = ROLES.find((name) => name === chosen)
    props.onAnswer(column.heading, role ? { role } : { quantity: chosen })
  }

  return (
    <section>
      <h2>{say('page.lab.columns')}</h2>
      <Wide label={say('page.lab.columns')}>
        <table class="columns">
          <thead>
            <tr>
              <th scope="col">{say('page.lab.col.heading')}</th>
              <th scope="col">{say('page.lab.col.example')}</th>
              <th scope="col">{say('page.lab.col.meaning')}</th>
              <th scope="col">{say('page.lab.col.unit')}</th>
              <th scope="col">{say('page.lab.col.why')}</th>
            </tr>
          </thead>
          <tbody>
            <For each={drawn()}>
              {(column) => (
                <tr>
                  <th scope="row">{column.heading}</th>
                  <td class="quiet">{example(column)}</td>
                  <td>
                    <select
                      class="field"
                      aria-label={say('page.lab.meaning_of', { heading: column.heading })}
                      onChange={(event) => change(column, event.currentTarget.value)}
                    >
                      <For each={ROLES}>
                        {(role) => (
                          <option value={role} selected={meaning(column) === role}>
                            {say(`page.lab.role.${role}`)}
                          </option>
                        )}
                      </For>
                      <For each={props.known}>
                        {(one) => (
                          <option value={one.name} selected={meaning(column) === one.name}>
                            {labelOf(one.name)}
                          </option>
                        )}
                      </For>
                      <Show when={column.role !== 'quantity' && !ROLES.some((role) => role === column.role)}>
                        <option value={column.role} selected disabled>
                          {column.role.replaceAll('_', ' ')}
                        </option>
                      </Show>
                    </select>
                  </td>
                  <td>
                    <Show when={isOpen(column) && column.unit} fallback={<span class="quiet">{column.unitText}</span>}>
                      {(unit) => (
                        <select
                          class="field"
                          aria-label={say('page.lab.unit_of', { heading: column.heading })}
                          onChange={(event) => props.onAnswer(column.heading, { unit: event.currentTarget.value })}
                        >
                          <For each={unitChoices(unit().code)}>
                            {(code) => (
                              <option value={code} selected={code === unit().code}>
                                {unitWords(code) || say('page.lab.no_unit')}
                              </option>
                            )}
                          </For>
                        </select>
                      )}
                    </Show>
                  </td>
                  <td class="quiet">{whyText(column)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </Wide>
    </section>
  )
}

function unitChoices(code: string): readonly string[] {
  const codes = unitsOfKind(code).map((unit) => unit.code)
  return codes.includes(code) ? codes : [code, ...codes]
}
