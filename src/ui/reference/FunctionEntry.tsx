import { For, Show } from 'solid-js'
import { type Check, isSolve, type LockedFunction, type Parameter, type Value } from '../../functions/define'
import { hasWords, say } from '../../words/say'
import { UnitText } from '../grid/UnitText'
import { Equation } from './Equation'

/** One locked function as the registry has it: what it says, takes and gives, where from, and what it is checked against. */
export function FunctionEntry(props: { function: LockedFunction }) {
  const f = () => props.function
  const words = (part: string) => {
    const key = `function.${f().name}.${part}`
    return hasWords(key) ? say(key) : ''
  }
  const outputs = () => {
    const now = f()
    return isSolve(now) ? now.outputs : [now.result]
  }
  return (
    <section class="function" id={`function-${f().name}`} aria-labelledby={`name-${f().name}`}>
      <h2 id={`name-${f().name}`}>
        {f().name}{' '}
        <span class="quiet">
          (
          {f()
            .parameters.map(({ name }) => name)
            .join('; ')}
          )
        </span>
      </h2>
      <p>{words('says')}</p>
      <Equation tex={f().equation} />
      <h3>{say('page.functions.parameters')}</h3>
      <table>
        <tbody>
          <For each={f().parameters}>
            {(parameter) => (
              <tr>
                <td>{parameter.name}</td>
                <td>
                  <UnitText unit={parameter.unit} />
                </td>
                <td>{[words(parameter.name), limits(parameter)].filter(Boolean).join(' ')}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <h3>{say('page.functions.gives')}</h3>
      <table>
        <tbody>
          <For each={outputs()}>
            {(output) => (
              <tr>
                <td>{output.name}</td>
                <td>
                  <UnitText unit={output.unit} />
                </td>
                <td />
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <h3>{say('page.functions.source')}</h3>
      <p>{f().source}</p>
      <h3>{say('page.functions.checks')}</h3>
      <ul class="checks">
        <For each={f().checks}>
          {(check) => (
            <li>
              {checkText(f(), check)} <span class="quiet">{check.where}</span>
            </li>
          )}
        </For>
      </ul>
      <Show when={f().version > 1}>
        <p class="quiet">{say('page.functions.version', { version: f().version })}</p>
      </Show>
    </section>
  )
}

function limits(parameter: Parameter): string {
  const { min, max, fitted, choices, optional } = parameter
  const parts: string[] = []
  if (choices) parts.push(choices.join(', '))
  if (min !== undefined && max !== undefined) parts.push(say('page.functions.limits', { span: span(min, max) }))
  else if (min !== undefined) parts.push(say('page.at_least', { low: min }))
  else if (max !== undefined) parts.push(say('page.at_most', { high: max }))
  if (fitted) parts.push(say('page.functions.fitted', { span: span(...fitted) }))
  if (optional) parts.push(say('page.functions.optional'))
  return parts.length > 0 ? `(${parts.join('; ')})` : ''
}

function span(low: number, high: number): string {
  return say('page.span', { low, high })
}

function checkText(f: LockedFunction, { args, expect, output, tolerance }: Check): string {
  const given = args.map((value) => (value === undefined ? '–' : shown(value))).join('; ')
  const call = `${f.name}(${given})${output === undefined ? '' : ` → ${output}`}`
  if (typeof expect !== 'number') return `${call} = ${shown(expect)}`
  return say('page.functions.check', { call, expect: shown(expect), tolerance: String(tolerance) })
}

function shown(value: Value): string {
  return typeof value === 'number' ? String(value).replace('-', '\u2212') : String(value)
}
