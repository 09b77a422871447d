import { type Accessor, createSignal } from 'solid-js'

const PAGES = [
  'worksheets',
  'desk',
  'plan',
  'handout',
  'record',
  'ranges',
  'study',
  'lab',
  'functions',
  'keys',
  'notebooks',
  'out',
  'assumptions',
  'trace',
  'keeping',
] as const

/** Which page is open, and the part of it: a worksheet's id, a function's name, of a plan its scenario; a quantity and `of` which scenario. */
export interface Place {
  readonly page: (typeof PAGES)[number]
  readonly part?: string
  readonly of?: string
}

function read(): Place {
  const [page = '', part, of] = decodeURIComponent(location.hash.slice(1)).split('/')
  const known = PAGES.find((name) => name === page) ?? 'worksheets'
  if (!part) return { page: known }
  return of ? { page: known, part, of } : { page: known, part }
}

const [place, setPlace] = createSignal<Place>(read(), { equals: false })
addEventListener('hashchange', () => setPlace(read()))

/** The place in the address, so that it survives a reload and the browser's own back key. Tracked. */
export function usePlace(): Accessor<Place> {
  return place
}

export function placeLink({ page, part, of }: Place): string {
  return `#${[page, part, of].flatMap((one) => (one === undefined ? [] : [encodeURIComponent(one)])).join('/')}`
}

export function goTo(to: Place): void {
  location.hash = placeLink(to)
}
