import { createVirtualizer } from '@tanstack/solid-virtual'
import { createEffect, For, on, Show } from 'solid-js'
import type { Entry } from '../../storage/records'
import { say } from '../../words/say'
import { whenWords } from '../lab/fileFacts'

/** Height of a line, in pixels, before it has been measured. */
const LINE = 50
/** Up to so many stand on the page as they are; more are in a box of their own, drawn as they come into sight. */
const FEW = 12

export interface ListActs {
  readonly isOpen: (id: string) => boolean
  readonly open: (entry: Entry) => void
  readonly copy: (entry: Entry) => void
  readonly remove: (entry: Entry) => void
}

/** Kept notebooks, one a line. */
export function NotebookList(props: { entries: readonly Entry[]; none: string; acts: ListActs }) {
  return (
    <Show
      when={props.entries.length > FEW}
      fallback={
        <ul class="lines">
          <For each={props.entries} fallback={<li class="quiet">{props.none}</li>}>
            {(entry) => (
              <li>
                <Line entry={entry} acts={props.acts} />
              </li>
            )}
          </For>
        </ul>
      }
    >
      <ManyLines entries={props.entries} acts={props.acts} />
    </Show>
  )
}

function ManyLines(props: { entries: readonly Entry[]; acts: ListActs }) {
  let box!: HTMLDivElement
  const virtual = createVirtualizer<HTMLDivElement, HTMLLIElement>({
    get count() {
      return props.entries.length
    },
    getScrollElement: () => box,
    estimateSize: () => LINE,
    // what was measured of an entry counts wherever it stands in the next find
    getItemKey: (at) => props.entries[at]?.id ?? at,
    overscan: 4,
  })
  createEffect(
    on(
      () => props.entries,
      () => {
        box.scrollTop = 0
      },
      { defer: true },
    ),
  )
  return (
    <div ref={box} class="lines-box" tabindex={0} role="group" aria-label={say('page.title.notebooks')}>
      <ul class="lines" style={{ height: `${virtual.getTotalSize()}px` }}>
        <For each={virtual.getVirtualItems()}>
          {(item) => (
            <Show when={props.entries[item.index]}>
              {(entry) => (
                <li
                  ref={(line) => queueMicrotask(() => virtual.measureElement(line))}
                  data-index={item.index}
                  aria-setsize={props.entries.length}
                  aria-posinset={item.index + 1}
                  style={{ transform: `translateY(${item.start}px)` }}
                >
                  <Line entry={entry()} acts={props.acts} />
                </li>
              )}
            </Show>
          )}
        </For>
      </ul>
    </div>
  )
}

function Line(props: { entry: Entry; acts: ListActs }) {
  const about = () => {
    const when = props.acts.isOpen(props.entry.id)
      ? say('page.notebooks.is_open')
      : say('page.notebooks.changed', { when: whenWords(props.entry.changed) })
    return props.entry.place === '' ? when : say('forget.place_and_when', { place: props.entry.place, when })
  }
  return (
    <>
      <span class="name">{props.entry.name}</span>
      <span class="when">{about()}</span>
      <Act does="open" entry={props.entry} act={props.acts.open} />
      <Act does="copy" entry={props.entry} act={props.acts.copy} />
      <Act does="delete" entry={props.entry} act={props.acts.remove} />
    </>
  )
}

function Act(props: { does: 'open' | 'copy' | 'delete'; entry: Entry; act: (entry: Entry) => void }) {
  const label = () => say(`page.notebooks.${props.does}`)
  return (
    <button
      type="button"
      class="act"
      aria-label={`${label()} ${props.entry.name}`}
      onClick={() => props.act(props.entry)}
    >
      {label()}
    </button>
  )
}
