/** The way that Enter takes through the form: every element marked `data-desk`, in the order of the page. */
export function moveOn(from: Element, by: 1 | -1 = 1): void {
  const page = from.closest('.desk')
  if (!page) return
  const all = [...page.querySelectorAll<HTMLElement>('[data-desk]')].filter((one) => one.checkVisibility())
  const here = all.findIndex((one) => one.contains(from))
  const next = here < 0 ? all.find((one) => isAfter(from, one)) : all[here + by]
  if (next) focusField(next)
}

/** Puts the focus on the field of this name; answers whether it is to be seen. */
export function goToField(name: string): boolean {
  const field = document.querySelector<HTMLElement>(`.desk [data-desk="${CSS.escape(name)}"]`)
  const folded = field?.closest('details')
  if (folded) folded.open = true
  if (!field?.checkVisibility()) return false
  focusField(field)
  return true
}

function focusField(field: HTMLElement): void {
  const target = field.matches('input, button, a, select')
    ? field
    : (field.querySelector<HTMLElement>('input:checked') ??
      field.querySelector<HTMLElement>('input, button, a, select'))
  target?.focus()
  if (target instanceof HTMLInputElement && target.type === 'text') target.select()
  target?.scrollIntoView({ block: 'nearest' })
}

function isAfter(from: Element, other: Element): boolean {
  return (from.compareDocumentPosition(other) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0
}
