import { type Accessor, createMemo } from 'solid-js'
import { isForetold } from '../../notebook/foretold'
import type { Doubt } from '../../study/doubt'
import { openEnds } from '../../study/firmness'
import { restsOn } from '../../study/restsOn'
import type { Interval } from '../../study/uncertainty'
import { say } from '../../words/say'
import { bandIn } from '../grid/bandIn'
import { labelInside } from '../labelOf'
import { type Book, useBook } from '../shell/book'
import { volumeIn } from '../volumeIn'
import { axisOf } from './axis'
import { bookDoubts } from './bookDoubts'
import { createStudied, type Studied } from './createStudied'
import { studyColumn } from './studyColumn'

/** How sure a value is: its interval, what moves it, and whether the verdict stands. */
export interface Sureness {
  /** null until everything behind it is known */
  readonly doubts: Accessor<readonly Doubt[] | null>
  /** the result is an assumption of this scenario */
  readonly assumed: Accessor<boolean>
  /** its water was tested by nobody */
  readonly foretold: Accessor<boolean>
  readonly interval: Accessor<Interval | null>
  readonly swings: Studied<'swings'>
  readonly working: Accessor<boolean>
  /** `0.05 to 0.31`, empty where there is none */
  readonly text: Accessor<string>
  /** whether the tests leave the verdict open, and which to make again first; empty where there is no verdict */
  readonly verdict: Accessor<string>
  readonly open: Accessor<boolean>
}

/** A volume is in doubt between its ends, also one that was taken over with them. */
function hasEnds(book: Book, scenario: string): boolean {
  const volume = volumeIn(book, scenario)
  return volume !== null && volume.low < volume.high
}

/** @param rest how long readings have to rest before columns are worked out, in milliseconds */
export function createSureness(scenario: Accessor<string>, output: Accessor<string>, rest?: number): Sureness {
  const book = useBook()
  const column = createMemo(() => studyColumn(book, scenario(), [output()]))
  const precisions = createMemo(() => book.notebook().precisions)
  const assumed = createMemo(() => {
    const isComputed = book.catalog().quantities.get(output())?.formula != null
    return isComputed && column()?.has(output()) === true && !(output() === 'volume' && hasEnds(book, scenario()))
  })
  const foretold = createMemo(() => isForetold(book.scenario(scenario())))
  const doubts = createMemo(() => {
    const water = column()
    // what was entered over a result is not worked out from readings any more; of a water that is foretold nobody knows how
    // far the readings behind it are off
    if (assumed() || foretold()) return []
    return water && bookDoubts(book, scenario(), water, restsOn(book.catalog(), output()), precisions())
  })
  const order = createMemo(() => {
    const [water, found] = [column(), doubts()]
    return water && found && found.length > 0 ? { column: water, doubts: found, output: output() } : null
  })
  const wide = createMemo(() => {
    const asked = order()
    return asked && { column: asked.column, doubts: asked.doubts, outputs: [asked.output] }
  })
  const intervals = createStudied('intervals', wide, rest)
  const swings = createStudied('swings', order, rest)

  const interval = createMemo(() => intervals.current()?.result[0] ?? null)
  const text = createMemo(() => {
    const ends = interval()?.ends
    if (!ends) return ''
    const axis = axisOf(book, output())
    return say('page.study.interval', { low: axis.figure(ends[0]), high: axis.text(ends[1]) })
  })
  const limits = createMemo(() => {
    const ends = interval()?.ends
    const row = book.catalog().quantities.get(output())?.row
    const band = row && bandIn(book, row, scenario())
    return ends && band ? openEnds(ends, band) : null
  })
  const verdict = createMemo(() => {
    const [open, axis] = [limits(), axisOf(book, output())]
    const first = swings.current()?.result.swings[0]
    if (open === null || !first) return ''
    const [low, high] = open
    if (low === undefined) return say('page.study.firm')
    const { quantity } = first.doubt
    const kind = quantity === output() ? 'open_input' : quantity === 'volume' ? 'open_volume' : 'open'
    const reading = labelInside(quantity, book.catalog().quantities.get(quantity)?.row)
    return high === undefined
      ? say(`page.study.${kind}`, { limit: axis.text(low), reading })
      : say(`page.study.${kind}_both`, { low: axis.figure(low), high: axis.text(high), reading })
  })
  return {
    doubts,
    assumed,
    foretold,
    interval,
    swings,
    working: () => intervals.working() || swings.working(),
    text,
    verdict,
    open: () => (limits()?.length ?? 0) > 0,
  }
}
