import { type Accessor, createSignal } from 'solid-js'

const PAGES = [
  'worksheets',
  'desk',
  'plan',
  'handout',
  'record',
  'study',
  'lab',
  'functions',
  'keys',
  'notebooks',
  'out',
  'keeping',
] as const

/** Which page is open, and the part of it: a worksheet's id, a function's name. */
export interface Place {
  readonly page: (typeof PAGES)[number]
  readonly part?: string
}

function read(): Place {
  const [page = '', part] = decodeURIComponent(location.hash.slice(1)).split('/')
  const known = PAGES.find((name) => name === page) ?? 'worksheets'
  return part ? { page: known, part } : { page: known }
}

const [place, setPlace] = createSignal<Place>(read(), { equals: false })
addEventListener('hashchange', () => setPlace(read()))

/** The place in the address, so that it survives a reload and the browser's own back key. Tracked. */
export function usePlace(): Accessor<Place> {
  return place
}

export function placeLink({ page, part }: Place): string {
  return part === undefined ? `#${page}` : `#${page}/${encodeURIComponent(part)}`
}

export function goTo(to: Place): void {
  location.hash = placeLink(to)
}
