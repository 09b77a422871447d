import { createEffect, createMemo, createSignal, For, on, Show } from 'solid-js'
import { assumptionsOf } from '../../notebook/assumptions'
import { say } from '../../words/say'
import { worksheetLabel } from '../grid/worksheetLabel'
import { useBook } from '../shell/book'
import { type Place, placeLink, usePlace } from '../shell/place'
import { headline } from './headline'
import { Settings } from './Settings'

/** The contents: this notebook's worksheets, each with its state in a few words, then the other pages. */
export function Rail() {
  const book = useBook()
  const place = usePlace()
  const worksheet = createMemo(() => book.selection.cell()?.row.worksheet)
  const assumptions = createMemo(() => assumptionsOf(book.notebook(), book.catalog()).length)
  const [open, setOpen] = createSignal(false)
  createEffect(on(place, () => setOpen(false)))
  const others: readonly Place['page'][] = [
    'desk',
    'record',
    'study',
    'lab',
    'ranges',
    'functions',
    'keys',
    'out',
    'notebooks',
    'keeping',
  ]

  return (
    <nav class="rail" classList={{ open: open() }} aria-label={say('page.contents')}>
      <div class="title">
        <a href={placeLink({ page: 'worksheets' })}>
          <h1>{book.notebook().name}</h1>
        </a>
        <button
          type="button"
          class="act fold"
          aria-expanded={open()}
          aria-controls="contents"
          onClick={() => setOpen(!open())}
        >
          {say('page.contents')}
        </button>
      </div>
      <Show when={book.notebook().note}>{(note) => <p class="about quiet">{note()}</p>}</Show>
      <div id="contents">
        <ol>
          <For each={book.catalog().worksheets}>
            {(definition, index) => {
              const line = createMemo(() => headline(book, definition))
              // The plan is a page of its own; its rows are only what the page asks beforehand.
              const isPlan = definition.id === 'plan'
              const here = () =>
                isPlan ? place().page === 'plan' : place().page === 'worksheets' && worksheet() === definition.id
              return (
                <li>
                  <a
                    href={placeLink(isPlan ? { page: 'plan' } : { page: 'worksheets', part: definition.id })}
                    aria-current={here() ? 'true' : undefined}
                  >
                    <span class="number">{index() + 1}</span>
                    <span class="name">{worksheetLabel(definition)}</span>
                    <Show when={line().text}>
                      <span class="line" classList={{ warm: line().out }}>
                        {line().text}
                      </span>
                    </Show>
                  </a>
                </li>
              )
            }}
          </For>
        </ol>
        <ul class="others">
          <Show when={assumptions() > 0}>
            <li>
              <a
                href={placeLink({ page: 'assumptions' })}
                aria-current={place().page === 'assumptions' ? 'page' : undefined}
              >
                <span class="name">{say('page.title.assumptions')}</span>
                <span class="line">{say('page.rail.assumed', { count: assumptions() })}</span>
              </a>
            </li>
          </Show>
          <For each={others}>
            {(page) => (
              <li>
                <a href={placeLink({ page })} aria-current={place().page === page ? 'page' : undefined}>
                  <span class="name">{say(`page.title.${page}`)}</span>
                </a>
              </li>
            )}
          </For>
        </ul>
        <Settings />
        <p class="codes quiet">{say('page.codes_first')}</p>
      </div>
    </nav>
  )
}
