import { createUniqueId, For, Match, onMount, Switch } from 'solid-js'
import { Portal } from 'solid-js/web'

export type MenuItem =
  | { readonly kind: 'act'; readonly label: string; readonly act: () => void; readonly disabled?: boolean }
  | { readonly kind: 'choice'; readonly label: string; readonly checked: boolean; readonly act: () => void }
  | { readonly kind: 'heading'; readonly label: string }

/**
 * A menu under the element that opened it, after the WAI-ARIA menu pattern: arrows, Home, End and first letters move,
 * Enter acts, Escape or a press elsewhere closes and the focus goes back.
 */
export function Menu(props: { anchor: HTMLElement; label: string; items: readonly MenuItem[]; onClose: () => void }) {
  let menu: HTMLDivElement | undefined
  const id = createUniqueId()

  onMount(() => {
    if (!menu) return
    menu.showPopover()
    const from = props.anchor.getBoundingClientRect()
    const size = menu.getBoundingClientRect()
    const room = document.documentElement
    menu.style.left = `${Math.max(Math.min(from.left, room.clientWidth - size.width - 8), 8)}px`
    menu.style.top = `${Math.max(Math.min(from.bottom + 4, room.clientHeight - size.height - 8), 8)}px`
    items()[0]?.focus()
  })

  const items = (): HTMLElement[] => [...(menu?.querySelectorAll<HTMLElement>('[role^=menuitem]') ?? [])]

  function focusItem(index: number): void {
    const all = items()
    all[(index + all.length) % all.length]?.focus()
  }

  function onKeyDown(event: KeyboardEvent): void {
    const all = items()
    const at = all.indexOf(document.activeElement as HTMLElement)
    event.stopPropagation()
    switch (event.key) {
      case 'ArrowDown':
        focusItem(at + 1)
        break
      case 'ArrowUp':
        focusItem(at - 1)
        break
      case 'Home':
        focusItem(0)
        break
      case 'End':
        focusItem(all.length - 1)
        break
      case 'Escape':
      case 'Tab':
        close()
        break
      default: {
        if (event.key.length !== 1 || event.key === ' ' || event.ctrlKey) return
        const letter = event.key.toLowerCase()
        const next = [...all.slice(at + 1), ...all].find((item) => item.textContent?.toLowerCase().startsWith(letter))
        next?.focus()
      }
    }
    event.preventDefault()
  }

  function close(): void {
    // Read first: closing takes the menu, and with it its properties, away.
    const { anchor } = props
    props.onClose()
    anchor.focus()
  }

  function run(act: () => void): void {
    close()
    act()
  }

  return (
    <Portal mount={document.getElementById('page') ?? document.body}>
      <div
        ref={menu}
        id={id}
        class="menu"
        role="menu"
        tabindex={-1}
        popover="manual"
        aria-label={props.label}
        onKeyDown={onKeyDown}
        onFocusOut={(event) => {
          if (!menu?.contains(event.relatedTarget as Node | null)) props.onClose()
        }}
      >
        <For each={props.items}>
          {(item) => (
            <Switch>
              <Match when={item.kind === 'heading' && item}>
                {(heading) => (
                  <div role="presentation">
                    <div role="separator" />
                    <div class="heading">{heading().label}</div>
                  </div>
                )}
              </Match>
              <Match when={item.kind === 'choice' && item}>
                {(choice) => (
                  <button
                    type="button"
                    role="menuitemradio"
                    aria-checked={choice().checked}
                    tabindex={-1}
                    onClick={() => run(choice().act)}
                  >
                    {choice().checked ? '✓ ' : ''}
                    {choice().label}
                  </button>
                )}
              </Match>
              <Match when={item.kind === 'act' && item}>
                {(act) => (
                  <button
                    type="button"
                    role="menuitem"
                    aria-disabled={act().disabled ?? false}
                    tabindex={-1}
                    onClick={() => {
                      if (!act().disabled) run(act().act)
                    }}
                  >
                    {act().label}
                  </button>
                )}
              </Match>
            </Switch>
          )}
        </For>
      </div>
    </Portal>
  )
}
