import { type Accessor, createContext, createSignal, useContext } from 'solid-js'
import { copyNotebook, newNotebook } from '../../notebook/create'
import type { Notebook, Profile } from '../../notebook/notebook'
import type { Forgetting } from '../../storage/forget'
import { type Claim, claim } from '../../storage/lock'
import { forgetPreferences, keepPreference, preference } from '../../storage/preference'
import { prepareKeeping } from '../../storage/prepareKeeping'
import { askToKeep } from '../../storage/promise'
import type { Entry } from '../../storage/records'
import type { Readable } from '../../storage/replay'
import type { StateEntry } from '../../storage/states'
import { openStore, type Store } from '../../storage/store'
import { isProblem, type Problem } from '../../words/problem'
import { say } from '../../words/say'
import { hasOwnParts, prepareOwnWorksheets } from '../../worksheet/ownWorksheets'
import { localTime } from '../desk/when'
import type { Append } from './createBook'
import { ofToday } from './ofToday'
import { profileFor } from './profileFor'
import { onForgotten, tellForgotten } from './tabs'

/** A notebook as it was opened. */
export interface Opened {
  readonly notebook: Notebook
  /** null: it is kept nowhere */
  readonly append: Append | null
  readonly writable: boolean
}

export interface Trouble {
  readonly why: Problem
  /** null: it was not kept here */
  readonly id: string | null
}

/** What lies on the desk: the open notebook, and the others that the browser keeps. */
export interface Desk {
  readonly opened: Accessor<Opened | null>
  /** why nothing can be kept; null when it can */
  readonly blocked: Accessor<Problem | null>
  /** why a notebook could not be opened, and which one */
  readonly trouble: Accessor<Trouble | null>
  /** the example is open, and was put there because nothing was kept yet */
  readonly firstRun: Accessor<boolean>
  /** the units in which a new notebook begins */
  profile(): Profile
  /** own rows of the opened notebook that had to take other names: `old → new` */
  readonly renamed: Accessor<readonly string[]>
  list(): Promise<readonly Entry[] | Problem>
  open(id: string): Promise<void>
  /** keeps a new notebook, under another id if its own is taken, and opens it */
  add(notebook: Notebook): Promise<Problem | null>
  start(name: string): Promise<Problem | null>
  copy(id: string, name: string): Promise<Problem | null>
  /** a notebook as it is kept, without opening it */
  peek(id: string): Promise<Notebook | Problem>
  /** deletes a notebook with all that this browser keeps of it, in this tab and in others */
  forget(entry: Entry, forgetting: Forgetting): Promise<Problem | null>
  raw(id: string): Promise<string | Problem>
  /** what a notebook was before, the latest first */
  states(id: string): Promise<readonly StateEntry[] | Problem>
  state(id: string, seq: number): Promise<Notebook | Problem>
  /** as much of a damaged notebook as can be read */
  readable(id: string): Promise<Readable | Problem>
  /** what has to be finished before another notebook is opened */
  beforeLeaving(settle: () => Promise<void>): void
}

export const DeskContext = createContext<Desk>()

export function useDesk(): Desk {
  const desk = useContext(DeskContext)
  if (!desk) throw new RangeError('there is no desk here')
  return desk
}

export function createDesk(): Desk {
  const [opened, setOpened] = createSignal<Opened | null>(null)
  const [blocked, setBlocked] = createSignal<Problem | null>(null)
  const [trouble, setTrouble] = createSignal<Trouble | null>(null)
  /** the example that was put there because nothing was kept yet: its id */
  const [example, setExample] = createSignal<string | null>(null)
  const [renamed, setRenamed] = createSignal<readonly string[]>([])
  const store = openStore()
  let held: Claim | null = null
  let settle: () => Promise<void> = () => Promise.resolve()

  async function leave(): Promise<void> {
    await settle()
    settle = () => Promise.resolve()
    held?.release()
    held = null
  }

  async function show(notebook: Notebook, append: Append | null, writable: boolean): Promise<void> {
    const mine = hasOwnParts(notebook) ? await withFreeNames(notebook, writable ? append : null) : notebook
    keepPreference('notebook', notebook.id)
    const address = new URL(location.href)
    address.searchParams.set('notebook', notebook.id)
    history.replaceState(null, '', address)
    setOpened({ notebook: mine, append, writable })
  }

  /** Own rows whose names came to be shipped ones get others; that is kept, and told. */
  async function withFreeNames(notebook: Notebook, append: Append | null): Promise<Notebook> {
    const [{ freedNames }, { shippedOutline }] = await Promise.all([
      import('../../notebook/freedNames'),
      import('../../worksheet/shippedOutline'),
      prepareOwnWorksheets(),
    ])
    const freed = freedNames(notebook, shippedOutline())
    setRenamed(freed?.renamed ?? [])
    if (freed) await append?.([freed.edit])
    return freed?.notebook ?? notebook
  }

  /** @param known what was kept under this id just now: it need not be read again */
  async function openFrom(from: Store, id: string, known?: Notebook): Promise<Problem | null> {
    await leave()
    const mine = await claim(id, () => void takeOver(from, id))
    const notebook = known ?? (await from.load(id))
    if (isProblem(notebook)) {
      mine.release()
      return notebook
    }
    held = mine
    await show(notebook, (edits) => from.append(id, edits), mine.role === 'writer')
    return null
  }

  /** The tab that wrote is gone: read what it left, and write from there. */
  async function takeOver(from: Store, id: string): Promise<void> {
    const notebook = await from.load(id)
    if (isProblem(notebook)) setTrouble({ why: notebook, id })
    else await show(notebook, (edits) => from.append(id, edits), true)
  }

  async function add(notebook: Notebook, proven = false): Promise<Problem | null> {
    const to = await store
    if (isProblem(to)) {
      await leave()
      await show(notebook, null, true)
      return null
    }
    let kept = notebook
    let refused = await to.create(kept, proven)
    if (refused?.code === 'notebook_stored_already') {
      kept = copyNotebook(notebook, notebook.name)
      refused = await to.create(kept, proven)
    }
    return refused ?? openFrom(to, kept.id, kept)
  }

  async function begin(): Promise<void> {
    const wanted = new URL(location.href).searchParams.get('notebook') ?? preference('notebook')
    if (wanted !== null) void prepareKeeping()
    const from = await store
    if (isProblem(from)) {
      setBlocked(from)
      await addExample()
      return
    }
    // First and without the list: reading ten thousand entries would hold the first numbers up.
    if (wanted !== null && (await opens(from, wanted))) return
    const kept = await from.list()
    if (isProblem(kept)) {
      setBlocked(kept)
      await addExample()
      return
    }
    // One that cannot be read must not bar the way to the others.
    for (const { id } of kept) if (id !== wanted && (await opens(from, id))) return
    await addExample()
  }

  async function opens(from: Store, id: string): Promise<boolean> {
    const why = await openFrom(from, id)
    if (why && why.code !== 'notebook_not_stored') setTrouble({ why, id })
    return why === null
  }

  async function addExample(): Promise<void> {
    const { default: shipped } = await import('./exampleNotebook.build')
    const why = await add(ofToday(shipped, localTime(new Date()).slice(0, 10)), true)
    if (why) setTrouble({ why, id: null })
    else setExample(opened()?.notebook.id ?? null)
  }

  /** Another tab has deleted the notebook that is open here: what it holds to undo and to redo goes too. */
  async function letGo(id: string): Promise<void> {
    if (opened()?.notebook.id !== id) return
    await leave()
    setOpened(null)
    await begin()
  }

  async function within<T>(work: (open: Store) => Promise<T | Problem>): Promise<T | Problem> {
    const open = await store
    return isProblem(open) ? open : work(open)
  }

  const orNull = (answer: unknown): Problem | null => (isProblem(answer) ? answer : null)

  onForgotten((id) => void letGo(id))
  void begin()
  return {
    opened,
    blocked,
    trouble,
    // a real customer's pool may be opened beside it by many ways: what is open decides
    firstRun: () => example() !== null && opened()?.notebook.id === example(),
    profile: () => profileFor(opened()?.notebook, navigator.languages[0] ?? navigator.language),
    renamed,
    list: () => within((open) => open.list()),
    async open(id) {
      const why = orNull(await within((open) => openFrom(open, id)))
      setTrouble(why && { why, id })
    },
    add(notebook) {
      // a notebook of the reader's own is worth a promise; a browser that asks does so as an answer to this act
      void askToKeep()
      return add(notebook)
    },
    async start(name) {
      void askToKeep()
      const profile = profileFor(opened()?.notebook, navigator.languages[0] ?? navigator.language)
      return add(newNotebook(name || say('page.notebooks.unnamed'), say('page.notebooks.baseline_name'), profile))
    },
    copy: async (id, name) => orNull(await within((open) => open.copy(id, name))),
    peek: (id) => within((open) => open.load(id)),
    async forget({ id, name, place }, forgetting) {
      const isOpen = opened()?.notebook.id === id
      if (isOpen) {
        await leave()
        setOpened(null)
      }
      const { forget } = await import('../../storage/forget')
      const why = orNull(await forget(id, forgetting)) ?? orNull(await within((open) => open.remove(id)))
      if (!why) {
        forgetPreferences(id, [name, place])
        tellForgotten(id)
      }
      if (isOpen) await begin()
      return why
    },
    raw: (id) => within((open) => open.raw(id)),
    states: (id) => within((open) => open.states(id)),
    state: (id, seq) => within((open) => open.state(id, seq)),
    readable: (id) => within((open) => open.readable(id)),
    beforeLeaving(next) {
      settle = next
    },
  }
}
