import {
  ArraySize,
  CellError,
  FunctionPlugin,
  HyperFormula,
  type ImplementedFunctions,
  SimpleRangeValue,
} from 'hyperformula'
import { isSolve, type LockedFunction, type Value } from '../functions/define'
import { LOCKED } from '../functions/registry'
import { LIMITS } from '../notebook/limits'
import { GENERAL_FUNCTIONS } from '../worksheet/generalFunctions'
import { carry, isMissing } from './carried'
import { checkArgument } from './check'
import { cellId, type NoticeBoard } from './notices'
import { type Held, isList, runLocked } from './runLocked'

type Ast = Parameters<FunctionPlugin['evaluateAst']>[0]
type State = Parameters<FunctionPlugin['evaluateAst']>[1]
type Result = ReturnType<FunctionPlugin['evaluateAst']>
interface Call {
  readonly args: Ast[]
}

/** The plain number, text or truth inside a value of the engine (percentages and dates come wrapped). */
function plain(value: Result): unknown {
  return typeof value === 'object' && value !== null && 'val' in value ? value.val : value
}

function here(state: State): number {
  const { sheet, row, col } = state.formulaAddress
  return cellId(sheet, row, col)
}

/**
 * The notebook's functions in the engine: `CELL` around every computed row, the ways in which a reading can be
 * missing, and all locked functions out of the one registry.
 */
class Notebook extends FunctionPlugin {
  static override implementedFunctions: ImplementedFunctions = {}

  /** The engine's own board, given to it as its context. */
  get board(): NoticeBoard {
    return this.config.context as NoticeBoard
  }

  /** CELL(formula): clears this cell's notices, computes, and lets no exception and no half number out. */
  cell({ args }: Call, state: State): Result {
    this.board.clear(here(state))
    const [formula] = args
    if (!formula) return carry('not_computable', {})
    try {
      return this.#whole(this.evaluateAst(formula, state))
    } catch {
      return carry('not_computable', {})
    }
  }

  /** ENTRY("name"; "unit"; min; max; formula): an input for which a formula was entered; its result must be acceptable there. */
  entry({ args }: Call, state: State): Result {
    this.board.clear(here(state))
    const [name, unit, min, max, formula] = args.map((a) => this.evaluateAst(a, state))
    const value = this.#whole(formula ?? carry('not_computable', {}))
    if (typeof value !== 'number')
      return value instanceof CellError ? value : carry('not_a_number_here', { name: String(name) })
    if (value < Number(min) || value > Number(max)) {
      const facts = { name: String(name), found: value, min: Number(min), max: Number(max) }
      // a formula gives the unit that the row counts in, whatever it is shown in: without it the figures are read in another
      return carry('entry_out_of_range', { ...facts, unit: unit === '1' ? '' : ` ${String(unit)}` })
    }
    return value
  }

  /** NOT_TAKEN("ph"): the content of an input that has no value. */
  notTaken({ args }: Call, state: State): Result {
    const [name] = args
    return carry('missing', { names: name ? String(this.evaluateAst(name, state)) : '' })
  }

  /** REFUSED("code"; "name"): what cannot be computed: a scenario that is gone, a quantity that nobody gives. */
  refused({ args }: Call, state: State): Result {
    const [code, name] = args.map((a) => String(this.evaluateAst(a, state)))
    return carry(code ?? 'not_computable', { name: name ?? '' })
  }

  /** UNLESS(condition; "code"; "fact"; "its value"; formula): that problem where the condition is true; an error is not true. */
  unless({ args }: Call, state: State): Result {
    const [condition, code, fact, value, formula] = args
    if (!condition || !code || !fact || !value || !formula) return carry('not_computable', {})
    if (plain(this.evaluateAst(condition, state)) !== true) return this.evaluateAst(formula, state)
    const [said, name, text] = [code, fact, value].map((a) => String(this.evaluateAst(a, state)))
    return carry(said ?? '', { [name ?? '']: text ?? '' })
  }

  /** ASSUMED(x; value; "name"): x where it was taken, else the declared value, with a notice. */
  assumed({ args }: Call, state: State): Result {
    const [x, value, name] = args
    if (!x || !value || !name) return carry('not_computable', {})
    const taken = this.evaluateAst(x, state)
    if (!isMissing(taken)) return taken
    this.board.raise(here(state), `assumed:${String(this.evaluateAst(name, state))}`)
    return this.evaluateAst(value, state)
  }

  /** DEFAULT(x; y): y where x is not taken. Any other problem of x stands. */
  default({ args }: Call, state: State): Result {
    const [x, y] = args
    if (!x || !y) return carry('not_computable', {})
    const taken = this.evaluateAst(x, state)
    return isMissing(taken) ? this.evaluateAst(y, state) : taken
  }

  /** MISSING(x): whether x is not taken. */
  missing({ args }: Call, state: State): Result {
    const [x] = args
    if (!x) return carry('not_computable', {})
    const taken = this.evaluateAst(x, state)
    return taken instanceof CellError && !isMissing(taken) ? taken : isMissing(taken)
  }

  /** The arguments of a locked function, checked; or the first error among them. */
  checked(f: LockedFunction, args: Ast[], state: State): (Value | undefined)[] | CellError {
    const values: (Value | undefined)[] = new Array(f.parameters.length)
    for (let i = 0; i < f.parameters.length; i++) {
      const parameter = f.parameters[i]
      const arg = args[i]
      if (!parameter) continue
      const given = arg === undefined ? undefined : this.evaluateAst(arg, state)
      if (given === undefined || isMissing(given)) {
        if (!parameter.optional) return given instanceof CellError ? given : carry('missing', { names: parameter.name })
        values[i] = undefined
        continue
      }
      if (given instanceof CellError) return given
      const value = checkArgument(f, parameter, plain(given), (name) => this.board.raise(here(state), `fitted:${name}`))
      if (typeof value === 'object') return carry(value.code, value.facts)
      values[i] = value
    }
    return values
  }

  #whole(value: Result): Result {
    if (value instanceof CellError || value instanceof SimpleRangeValue) return value
    const raw = plain(value)
    if (typeof raw === 'number') return Number.isFinite(raw) ? raw : carry('no_number', {})
    if (typeof raw === 'string' && raw.length > LIMITS.text) return carry('text_too_long', { most: LIMITS.text })
    return typeof raw === 'string' || typeof raw === 'boolean' ? raw : carry('not_computable', {})
  }
}

function cellOf(held: Held): Value | CellError {
  return typeof held === 'object' ? carry(held.code, held.facts) : held
}

function run(plugin: Notebook, f: LockedFunction, { args }: Call, state: State): Result {
  if (isSolve(f)) plugin.board.clear(here(state))
  const values = plugin.checked(f, args, state)
  if (values instanceof CellError) return values
  const result = runLocked(f, values)
  return isList(result) ? SimpleRangeValue.onlyValues(result.map((one) => [cellOf(one)])) : cellOf(result)
}

const OURS: Readonly<Record<string, string>> = {
  CELL: 'cell',
  ENTRY: 'entry',
  NOT_TAKEN: 'notTaken',
  REFUSED: 'refused',
  UNLESS: 'unless',
  ASSUMED: 'assumed',
  DEFAULT: 'default',
  MISSING: 'missing',
}

let registered = false

/**
 * Registers the functions with the engine, once a thread.
 * @throws Error when a name would replace one of the engine's own, or one that formulas may call is lacking: defects of ours.
 */
export function registerFunctions(): void {
  if (registered) return
  registered = true
  const taken = new Set(HyperFormula.getRegisteredFunctionNames('enGB'))
  const prototype = Notebook.prototype as unknown as Record<string, unknown>
  const translations: Record<string, string> = {}
  const add = (name: string, method: string, sizeMethod?: string) => {
    if (taken.has(name)) throw new Error(`the engine has a function ${name} of its own`)
    Notebook.implementedFunctions[name] = sizeMethod ? { method, sizeOfResultArrayMethod: sizeMethod } : { method }
    translations[name] = name
  }
  for (const [name, method] of Object.entries(OURS)) add(name, method)
  for (const f of LOCKED) {
    const method = `locked_${f.name}`
    prototype[method] = function (this: Notebook, call: Call, state: State) {
      return run(this, f, call, state)
    }
    if (!isSolve(f)) {
      add(f.name, method)
      continue
    }
    const size = new ArraySize(1, f.outputs.length)
    prototype[`${method}_size`] = () => size
    add(f.name, method, `${method}_size`)
  }
  HyperFormula.registerFunctionPlugin(Notebook, { enGB: translations })
  const known = new Set(HyperFormula.getRegisteredFunctionNames('enGB'))
  const lacking = [...GENERAL_FUNCTIONS.keys()].filter((name) => !known.has(name))
  if (lacking.length > 0) throw new Error(`the engine lacks ${lacking.join(', ')}`)
}
