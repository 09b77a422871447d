import { isSolve } from '../../functions/define'
import { FUNCTIONS } from '../../functions/registry'
import { hasWords, say } from '../../words/say'
import { unitWords } from '../unitWords'

/** The function whose arguments are being written. */
export interface Signature {
  readonly name: string
  readonly parameters: readonly string[]
  /** which of them stands at the place; past the last one, the last */
  readonly current: number
  /** the unit of what it gives; empty where it depends or there is none */
  readonly gives: string
  readonly says: string
}

/** The innermost call that is open at a place of the text. Texts in it are passed over. */
export function callAt(text: string, at: number): Signature | null {
  const open: { name: string; argument: number }[] = []
  let word = ''
  for (let i = 0; i < at; i++) {
    const c = text.charAt(i)
    if (c === '"' || c === "'") {
      const end = text.indexOf(c, i + 1)
      if (end < 0 || end >= at) return null
      i = end
      word = ''
    } else if (c === '(') {
      open.push({ name: word.toUpperCase(), argument: 0 })
      word = ''
    } else if (c === ')') {
      open.pop()
      word = ''
    } else if (c === ';') {
      const last = open.at(-1)
      if (last) last.argument += 1
      word = ''
    } else if (/[A-Za-z0-9_]/.test(c)) word += c
    else if (c.trim() !== '') word = ''
  }
  const call = open.findLast(({ name }) => name !== '')
  return call ? signatureOf(call.name, call.argument) : null
}

function signatureOf(name: string, argument: number): Signature | null {
  const locked = FUNCTIONS.get(name)
  if (locked && !isSolve(locked)) {
    const parameters = locked.parameters.map(({ name: called, unit, optional }) => {
      const words = unitWords(unit)
      const whole = words === '' ? called : `${called} ${words}`
      return optional ? `[${whole}]` : whole
    })
    const gives = unitWords(locked.result.unit)
    return { name, parameters, current: within(argument, parameters), gives, says: say(`function.${name}.says`) }
  }
  if (!hasWords(`general.${name}.takes`)) return null
  const parameters = say(`general.${name}.takes`).split('; ')
  return { name, parameters, current: within(argument, parameters), gives: '', says: say(`general.${name}.says`) }
}

function within(argument: number, parameters: readonly string[]): number {
  return Math.min(argument, Math.max(parameters.length - 1, 0))
}
