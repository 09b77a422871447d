import fc from 'fast-check'

/** As much of a Zod schema, of either face, as a walk over it needs. */
export interface Schema {
  readonly _zod: { readonly def: Def }
  safeParse(value: unknown): { readonly success: boolean }
}
interface Def {
  readonly type: string
  readonly shape?: Readonly<Record<string, Schema>>
  readonly element?: Schema
  readonly keyType?: Schema
  readonly valueType?: Schema
  readonly innerType?: Schema
  readonly options?: readonly Schema[]
  readonly items?: readonly Schema[]
  readonly values?: readonly unknown[]
  readonly entries?: Readonly<Record<string, string>>
  readonly checks?: readonly { readonly _zod: { readonly def: Check } }[]
  readonly format?: string
}
interface Check {
  readonly check: string
  readonly format?: string
  readonly pattern?: RegExp
  readonly minimum?: number
  readonly maximum?: number
  readonly value?: number
  readonly inclusive?: boolean
}

const defOf = (schema: Schema): Def => schema._zod.def
const checksOf = (schema: Schema): Check[] => (defOf(schema).checks ?? []).map((check) => check._zod.def)

/** What a part of a schema needs to be there; a schema of a kind that is not known here fails the test that walks it. */
function part<T>(found: T | undefined, schema: Schema): T {
  if (found === undefined) throw new RangeError(`a schema of type ${defOf(schema).type} is not as expected`)
  return found
}

/** Data that a schema accepts. */
export function valid(schema: Schema): fc.Arbitrary<unknown> {
  return made(schema).filter((value) => schema.safeParse(value).success)
}

function made(schema: Schema): fc.Arbitrary<unknown> {
  const def = defOf(schema)
  switch (def.type) {
    case 'object': {
      const entries = Object.entries(part(def.shape, schema)).map(([key, inner]) =>
        valid(inner).map((value) => [key, value] as const),
      )
      const optional = Object.entries(part(def.shape, schema))
        .filter(([, inner]) => defOf(inner).type === 'optional')
        .map(([key]) => key)
      return fc
        .tuple(fc.tuple(...entries), fc.subarray(optional))
        .map(([all, left]) => Object.fromEntries(all.filter(([key]) => !left.includes(key) || left.length < 3)))
    }
    case 'record':
      return fc
        .array(fc.tuple(valid(part(def.keyType, schema)) as fc.Arbitrary<string>, valid(part(def.valueType, schema))), {
          minLength: 1,
          maxLength: 2,
        })
        .map((entries) => Object.fromEntries(entries))
    case 'array': {
      const least = checksOf(schema).find(({ minimum }) => minimum !== undefined)?.minimum ?? 0
      return fc.array(valid(part(def.element, schema)), {
        minLength: Math.max(1, least),
        maxLength: Math.max(2, least),
      })
    }
    case 'tuple':
      return fc.tuple(...part(def.items, schema).map(valid))
    case 'union':
      return fc.oneof(...part(def.options, schema).map(valid))
    case 'optional':
    case 'nullable':
      return valid(part(def.innerType, schema))
    case 'literal':
      return fc.constantFrom(...part(def.values, schema))
    case 'enum':
      return fc.constantFrom(...Object.values(part(def.entries, schema)))
    case 'boolean':
      return fc.boolean()
    case 'number':
      return number(schema)
    case 'string':
      return text(schema)
    case 'unknown':
      return fc.constantFrom<unknown>('something', 7, { a: [1] })
    default:
      throw new RangeError(`the walk knows no schema of type ${def.type}`)
  }
}

function number(schema: Schema): fc.Arbitrary<number> {
  const checks = checksOf(schema)
  const least = checks.find(({ check }) => check === 'greater_than')
  const most = checks.find(({ check }) => check === 'less_than')
  const whole = checks.some(({ check }) => check === 'number_format') || defOf(schema).format === 'safeint'
  const min = least?.value ?? -1e6
  const max = most?.value ?? 1e6
  return whole ? fc.integer({ min: Math.ceil(min), max: Math.floor(max) }) : fc.double({ min, max, noNaN: true })
}

function text(schema: Schema): fc.Arbitrary<string> {
  const checks = checksOf(schema)
  const pattern = checks.find(({ format }) => format === 'regex')?.pattern
  if (pattern) return fc.stringMatching(pattern, { size: 'small' })
  const minLength = checks.find(({ check }) => check === 'min_length')?.minimum ?? 0
  return fc.string({ minLength, maxLength: Math.max(minLength, 8) })
}

/** A place in a document and the part of the schema that judges it. */
export interface Field {
  readonly path: readonly (string | number)[]
  readonly schema: Schema
}

/** Every place in a document that its schema speaks of. */
export function fieldsOf(schema: Schema, value: unknown, path: Field['path'] = []): Field[] {
  const def = defOf(schema)
  const inside = (inner: Schema, key: string | number) =>
    fieldsOf(inner, (value as Record<string | number, unknown>)[key], [...path, key])
  switch (def.type) {
    case 'object': {
      const there = Object.entries(part(def.shape, schema)).filter(([key]) => Object.hasOwn(value as object, key))
      return [{ path, schema }, ...there.flatMap(([key, inner]) => inside(inner, key))]
    }
    case 'record':
      return [
        { path, schema },
        ...Object.keys(value as object).flatMap((key) => inside(part(def.valueType, schema), key)),
      ]
    case 'array':
      return [{ path, schema }, ...(value as unknown[]).flatMap((_, index) => inside(part(def.element, schema), index))]
    case 'tuple':
      return [{ path, schema }, ...part(def.items, schema).flatMap((inner, index) => inside(inner, index))]
    case 'union': {
      const taken = part(def.options, schema).find((option) => option.safeParse(value).success)
      return [{ path, schema }, ...fieldsOf(part(taken, schema), value, path).slice(1)]
    }
    case 'optional':
    case 'nullable': {
      const inner = part(def.innerType, schema)
      return [{ path, schema }, ...(value === null ? [] : fieldsOf(inner, value, path).slice(1))]
    }
    default:
      return [{ path, schema }]
  }
}

/** A copy of a document with something else in one place. */
export function withValue(document: unknown, path: Field['path'], value: unknown): unknown {
  const [first, ...rest] = path
  if (first === undefined) return value
  if (Array.isArray(document)) return document.map((item, at) => (at === first ? withValue(item, rest, value) : item))
  const copy = { ...(document as Record<string, unknown>) }
  copy[first] = withValue(copy[first], rest, value)
  return copy
}
