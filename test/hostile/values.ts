import { type Field, type Schema, withValue } from './schema'

const deep = (levels: number): unknown => (levels === 0 ? 1 : [deep(levels - 1)])

/** What may stand in any place of a file that means harm, or was made by a program that is wrong. */
const VALUES: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  0.5,
  1e300,
  '',
  '7',
  'x'.repeat(20_000),
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '=WEBSERVICE("http://example.invalid/")',
  '\u0000\ud800',
  [],
  {},
  ['a', 'b'],
  { a: 1 },
  deep(60),
  JSON.parse('{"__proto__": {"polluted": true}}'),
  JSON.parse('{"constructor": {"prototype": {"polluted": true}}}'),
  { toString: 'x', valueOf: 1 },
  Array.from({ length: 20_000 }, () => 0),
]

/** A document with one field that cannot be, and what was done to it. */
export interface Broken {
  readonly document: unknown
  readonly path: Field['path']
  readonly what: string
}

/** @param turn which of the ways to break a field; they come one after another */
export function broken(document: unknown, { path, schema }: Field, turn: number): Broken | null {
  const at = (value: unknown, what: string): Broken => ({ document: withValue(document, path, value), path, what })
  const here = path.reduce<unknown>((inner, step) => (inner as Record<string | number, unknown>)[step], document)
  const shape = shapeOf(schema)
  if (shape && turn % 3 === 0) return at({ ...(here as object), [turn % 2 ? 'more' : 'toString']: 1 }, 'a key more')
  if (shape && turn % 3 === 1) {
    const needed = Object.entries(shape).filter(([, inner]) => inner._zod.def.type !== 'optional')
    const [gone] = needed[turn % needed.length] ?? []
    if (gone !== undefined) {
      const { [gone]: _, ...rest } = here as Record<string, unknown>
      if (!schema.safeParse(rest).success) return at(rest, `no ${gone}`)
    }
  }
  for (let step = 0; step < VALUES.length; step++) {
    const value = VALUES[(turn + step) % VALUES.length]
    if (!schema.safeParse(value).success) return at(value, JSON.stringify(value).slice(0, 60))
  }
  return null
}

function shapeOf(schema: Schema): Readonly<Record<string, Schema>> | undefined {
  return schema._zod.def.shape
}
