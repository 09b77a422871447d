import { type Accessor, createEffect, createSignal, on, onCleanup } from 'solid-js'
import { differences } from '../../notebook/differences'
import type { Notebook } from '../../notebook/notebook'
import type { StateEntry } from '../../storage/states'
import { isProblem, type Problem } from '../../words/problem'
import { say, sentence } from '../../words/say'
import { differenceText } from './differenceText'

/**
 * What was changed in the stretch of work that led to each state, by its sequence number; `'now'` for what led to the present.
 * They are read one by one, the latest first, with the page free to answer in between.
 */
export function createChanges(
  states: Accessor<readonly StateEntry[]>,
  read: (seq: number) => Promise<Notebook | Problem>,
  present: Accessor<Notebook | null>,
): Accessor<ReadonlyMap<number | 'now', string>> {
  const [texts, setTexts] = createSignal<ReadonlyMap<number | 'now', string>>(new Map())
  createEffect(
    on(states, (all) => {
      let left = false
      onCleanup(() => {
        left = true
      })
      setTexts(new Map())
      void follow(all, () => left)
    }),
  )

  async function follow(all: readonly StateEntry[], left: () => boolean): Promise<void> {
    let later: { readonly at: number | 'now'; readonly notebook: Notebook | Problem | null } = {
      at: 'now',
      notebook: present(),
    }
    const put = (at: number | 'now', text: string) => setTexts((before) => new Map(before).set(at, text))
    for (const { seq } of all) {
      const notebook = await read(seq)
      await new Promise((done) => setTimeout(done))
      if (left()) return
      if (later.notebook !== null) put(later.at, between(notebook, later.notebook))
      later = { at: seq, notebook }
    }
    if (later.notebook !== null && later.at !== 'now')
      put(later.at, isProblem(later.notebook) ? sentence(later.notebook) : say('keeping.first'))
  }
  return texts
}

function between(before: Notebook | Problem, after: Notebook | Problem): string {
  if (isProblem(after)) return sentence(after)
  if (isProblem(before)) return ''
  const all = differences(before, after).map((one) => differenceText(one, before, after))
  return all.length === 0 ? say('keeping.nothing_changed') : [...new Set(all)].join(' ')
}
