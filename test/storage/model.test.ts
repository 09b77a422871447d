import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apply } from '../../src/notebook/apply'
import type { Notebook } from '../../src/notebook/notebook'
import type { Store } from '../../src/storage/store'
import { isProblem } from '../../src/words/problem'
import { randomWishes, type Wish } from '../notebook/randomEdits'
import { EMPTY } from '../notebook/samples'
import { freshBrowser, good, opened } from './setup'

/** What the store should hold: the notebooks, and which of them this tab has open. */
interface Model {
  readonly notebooks: Map<string, Notebook>
  made: number
}
interface Real {
  store: Store
}

const nth = (model: Model, at: number): string | undefined => [...model.notebooks.keys()][at % model.notebooks.size]

class Create implements fc.AsyncCommand<Model, Real> {
  check = (model: Readonly<Model>) => model.notebooks.size < 4
  async run(model: Model, real: Real): Promise<void> {
    const notebook = { ...EMPTY, id: `book${model.made++}` }
    good(await real.store.create(notebook))
    model.notebooks.set(notebook.id, notebook)
  }
  toString = () => 'create'
}

class Append implements fc.AsyncCommand<Model, Real> {
  constructor(
    readonly at: number,
    readonly wishes: readonly Wish['edit'][],
  ) {}
  check = (model: Readonly<Model>) => model.notebooks.size > 0
  async run(model: Model, real: Real): Promise<void> {
    const id = nth(model, this.at) ?? ''
    let notebook = model.notebooks.get(id) ?? EMPTY
    const edits = []
    for (const wish of this.wishes) {
      const edit = wish(notebook)
      const applied = edit === null ? null : apply(notebook, edit)
      if (edit === null || applied === null || isProblem(applied)) continue
      edits.push(edit)
      notebook = applied.notebook
    }
    good(await real.store.append(id, edits))
    model.notebooks.set(id, notebook)
  }
  toString = () => `append ${this.wishes.length} to ${this.at}`
}

class Copy implements fc.AsyncCommand<Model, Real> {
  constructor(readonly at: number) {}
  check = (model: Readonly<Model>) => model.notebooks.size > 0
  async run(model: Model, real: Real): Promise<void> {
    const id = nth(model, this.at) ?? ''
    const copy = good(await real.store.copy(id, 'Copy'))
    model.notebooks.set(copy.id, { ...(model.notebooks.get(id) ?? EMPTY), id: copy.id, name: 'Copy' })
  }
  toString = () => `copy ${this.at}`
}

class Remove implements fc.AsyncCommand<Model, Real> {
  constructor(readonly at: number) {}
  check = (model: Readonly<Model>) => model.notebooks.size > 0
  async run(model: Model, real: Real): Promise<void> {
    const id = nth(model, this.at) ?? ''
    good(await real.store.remove(id))
    model.notebooks.delete(id)
  }
  toString = () => `remove ${this.at}`
}

/** A tab that ends and another that opens everything again. */
class Reload implements fc.AsyncCommand<Model, Real> {
  check = () => true
  async run(model: Model, real: Real): Promise<void> {
    real.store.close()
    real.store = await opened()
    for (const [id, notebook] of model.notebooks) expect(good(await real.store.load(id))).toEqual(notebook)
    const listed = good(await real.store.list())
    expect(new Map(listed.map(({ id, name }) => [id, name]))).toEqual(
      new Map([...model.notebooks].map(([id, { name }]) => [id, name])),
    )
  }
  toString = () => 'reload'
}

const pick = fc.nat({ max: 9 })
const commands = fc.commands(
  [
    fc.constant(new Create()),
    fc.tuple(pick, randomWishes(60)).map(([at, wishes]) => new Append(at, wishes)),
    pick.map((at) => new Copy(at)),
    pick.map((at) => new Remove(at)),
    fc.constant(new Reload()),
  ],
  { maxCommands: 25, size: 'max' },
)

test('the store keeps what a plain map of notebooks would', async () => {
  await fc.assert(
    fc.asyncProperty(commands, async (steps) => {
      freshBrowser()
      const real = { store: await opened() }
      await fc.asyncModelRun(
        () => ({ model: { notebooks: new Map<string, Notebook>(), made: 0 }, real }),
        [...steps, new Reload()],
      )
      real.store.close()
    }),
    { seed: 20260501, numRuns: process.env.LONG ? 300 : 30 },
  )
}, 60_000)
