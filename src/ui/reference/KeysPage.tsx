import { For } from 'solid-js'
import { pageKeys } from '../../words/en/page-keys'
import { addWords, say } from '../../words/say'

addWords(pageKeys)

const KEYS = {
  grid: [
    ['↑ ↓ ← →', 'arrows'],
    ['Tab', 'tab'],
    ['Shift Tab', 'back'],
    ['Home, End', 'home'],
    ['Ctrl Home, Ctrl End', 'ctrl_home'],
    ['Page Up, Page Down', 'page'],
    ['Shift ↑ ↓ ← →', 'extend'],
    ['Shift Space, Ctrl Space', 'whole'],
    ['Ctrl A', 'all'],
    ['Ctrl C, Ctrl X, Ctrl V', 'clipboard'],
    ['Ctrl R', 'fill'],
    ['/, Ctrl F', 'find'],
    ['Alt Shift ↑, Alt Shift ↓', 'fold'],
    ['Enter, F2', 'edit'],
    ['any character', 'type'],
    ['Delete, Backspace', 'clear'],
    ['-', 'dash'],
    ['?', 'explain'],
    ['Shift F10', 'menu'],
  ],
  entry: [
    ['Enter', 'enter'],
    ['Tab', 'enter_tab'],
    ['Escape', 'escape'],
    ['=', 'formula'],
    ['Ctrl Space', 'offer'],
    ['7.6, 59 °F, 15,000 gal', 'units'],
  ],
  page: [
    ['F6, Shift F6', 'region'],
    ['F8', 'desk'],
    ['F9', 'handout'],
    ['Ctrl Z', 'undo'],
    ['Ctrl Y, Ctrl Shift Z', 'redo'],
    ['Escape', 'close'],
    ['← →, Home, End', 'chart'],
  ],
} as const

/** What the keys do. */
export function KeysPage() {
  return (
    <article class="text-page">
      <h1>{say('page.title.keys')}</h1>
      <p class="intro">{say('page.keys.intro')}</p>
      <For each={['grid', 'entry', 'page'] as const}>
        {(part) => (
          <section>
            <h2>{say(`page.keys.${part}`)}</h2>
            <dl class="keys">
              <For each={KEYS[part]}>
                {([keys, does]) => (
                  <>
                    <dt>
                      <For each={keys.split(', ')}>
                        {(key, index) => (
                          <>
                            {index() > 0 ? ' ' : ''}
                            <kbd>{key}</kbd>
                          </>
                        )}
                      </For>
                    </dt>
                    <dd>{say(`page.keys.${part}.${does}`)}</dd>
                  </>
                )}
              </For>
            </dl>
          </section>
        )}
      </For>
    </article>
  )
}
