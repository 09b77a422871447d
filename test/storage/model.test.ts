import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apply } from '../../src/notebook/apply'
import type { Edit } from '../../src/notebook/edit'
import { goBack } from '../../src/notebook/goBack'
import type { Notebook } from '../../src/notebook/notebook'
import { makeBackup } from '../../src/storage/backup/makeBackup'
import { restore } from '../../src/storage/backup/restore'
import type { Store } from '../../src/storage/store'
import { isProblem } from '../../src/words/problem'
import { randomWishes, type Wish } from '../notebook/randomEdits'
import { EMPTY } from '../notebook/samples'
import { freshBrowser, good, opened } from './setup'

/** What the store should hold: the notebooks, and which of them this tab has open. */
interface Model {
  readonly notebooks: Map<string, Notebook>
  /** all that a notebook ever was, and the edits that take the last ones back, the last first */
  readonly past: Map<string, Notebook[]>
  readonly inverses: Map<string, Edit[]>
  made: number
}

const remember = (model: Model, notebook: Notebook): void => {
  model.notebooks.set(notebook.id, notebook)
  model.past.set(notebook.id, [...(model.past.get(notebook.id) ?? []), notebook])
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
    remember(model, notebook)
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
    const edits: Edit[] = []
    const inverses: Edit[] = []
    for (const wish of this.wishes) {
      const edit = wish(notebook)
      const applied = edit === null ? null : apply(notebook, edit)
      if (edit === null || applied === null || isProblem(applied)) continue
      edits.push(edit)
      inverses.unshift(applied.inverse)
      notebook = applied.notebook
      model.past.get(id)?.push(notebook)
    }
    good(await real.store.append(id, edits))
    model.notebooks.set(id, notebook)
    model.inverses.set(id, inverses)
  }
  toString = () => `append ${this.wishes.length} to ${this.at}`
}

class Copy implements fc.AsyncCommand<Model, Real> {
  constructor(readonly at: number) {}
  check = (model: Readonly<Model>) => model.notebooks.size > 0
  async run(model: Model, real: Real): Promise<void> {
    const id = nth(model, this.at) ?? ''
    const copy = good(await real.store.copy(id, 'Copy'))
    remember(model, { ...(model.notebooks.get(id) ?? EMPTY), id: copy.id, name: 'Copy' })
  }
  toString = () => `copy ${this.at}`
}

/** What was appended last is taken back. */
class Undo implements fc.AsyncCommand<Model, Real> {
  constructor(readonly at: number) {}
  check = (model: Readonly<Model>) => model.notebooks.size > 0
  async run(model: Model, real: Real): Promise<void> {
    const id = nth(model, this.at) ?? ''
    let notebook = model.notebooks.get(id) ?? EMPTY
    const edits = model.inverses.get(id) ?? []
    for (const edit of edits) {
      const applied = apply(notebook, edit)
      if (isProblem(applied)) throw new Error(applied.code)
      notebook = applied.notebook
    }
    good(await real.store.append(id, edits))
    model.inverses.set(id, [])
    remember(model, notebook)
  }
  toString = () => `undo ${this.at}`
}

/** Back to an earlier state, which has to be one that the notebook was in. */
class GoBack implements fc.AsyncCommand<Model, Real> {
  constructor(
    readonly at: number,
    readonly which: number,
  ) {}
  check = (model: Readonly<Model>) => model.notebooks.size > 0
  async run(model: Model, real: Real): Promise<void> {
    const id = nth(model, this.at) ?? ''
    const states = good(await real.store.states(id))
    const chosen = states[this.which % states.length]
    if (chosen === undefined) return
    const state = good(await real.store.state(id, chosen.seq))
    expect(model.past.get(id)).toContainEqual(state)
    const edit = goBack(model.notebooks.get(id) ?? EMPTY, state)
    good(await real.store.append(id, [edit]))
    model.inverses.set(id, [])
    remember(model, edit.to)
  }
  toString = () => `go back ${this.at} ${this.which}`
}

/** Everything into a file, the browser emptied, and everything out of the file. */
class Restore implements fc.AsyncCommand<Model, Real> {
  check = () => true
  async run(model: Model, real: Real): Promise<void> {
    const progress = { at: () => undefined, stop: new AbortController().signal }
    const judges = { lab: () => null, mapping: () => null }
    const { file, notebooks } = good(await makeBackup({ states: true }, progress, 1))
    expect(notebooks).toBe(model.notebooks.size)
    real.store.close()
    freshBrowser()
    const options = { judges, renamed: (name: string) => name, whole: true }
    expect(good(await restore(file, 'all', options, progress))).toMatchObject({ notebooks, same: 0, renamed: 0 })
    real.store = await opened()
    for (const [id, notebook] of model.notebooks) expect(good(await real.store.load(id))).toEqual(notebook)
  }
  toString = () => 'restore'
}

class Remove implements fc.AsyncCommand<Model, Real> {
  constructor(readonly at: number) {}
  check = (model: Readonly<Model>) => model.notebooks.size > 0
  async run(model: Model, real: Real): Promise<void> {
    const id = nth(model, this.at) ?? ''
    good(await real.store.remove(id))
    model.notebooks.delete(id)
    model.past.delete(id)
    model.inverses.delete(id)
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
    pick.map((at) => new Undo(at)),
    fc.tuple(pick, pick).map(([at, which]) => new GoBack(at, which)),
    fc.constant(new Restore()),
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
        () => ({
          model: { notebooks: new Map<string, Notebook>(), past: new Map(), inverses: new Map(), made: 0 },
          real,
        }),
        [...steps, new Reload()],
      )
      real.store.close()
    }),
    { seed: 20260501, numRuns: process.env.LONG ? 300 : 30 },
  )
}, 60_000)
