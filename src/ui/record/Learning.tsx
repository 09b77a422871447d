import { createMemo, createSignal, type JSX, Match, Show, Switch } from 'solid-js'
import { newId } from '../../notebook/create'
import type { Edit } from '../../notebook/edit'
import { narrowVolume } from '../../record/narrowVolume'
import { saltDisplay } from '../../record/saltDisplay'
import { type VolumeEvidence, volumeEvidence } from '../../record/volumeEvidence'
import { say, sentence } from '../../words/say'
import { announce } from '../shell/announce'
import { acceptedVolume } from './acceptedVolume'
import type { RecordView } from './createRecord'
import { dateWords } from './dateWords'
import { today } from './today'

/** What the record says of the pool beyond its readings. Nothing is taken over but by the reader's own hand. */
export function Learning(props: { view: RecordView }) {
  return (
    <>
      <Volume view={props.view} />
      <Display view={props.view} />
    </>
  )
}

function Volume(props: { view: RecordView }) {
  const { book, words, volume: known } = props.view
  const evidence = createMemo(() => volumeEvidence(book.notebook(), props.view.errorOf()))
  const says = createMemo(() => narrowVolume(known(), evidence()))
  const m3 = (value: number) => words('volume', value)
  const one = ({ quantity, before, after, low, high }: VolumeEvidence) =>
    say(Number.isFinite(high) ? 'record.learn.volume.one' : 'record.learn.volume.one_open', {
      quantity: props.view.label(quantity),
      from: dateWords(before.date),
      to: dateWords(after.date),
      low: m3(low),
      high: m3(high),
    })
  const knownWords = () => {
    const now = known()
    return now === null
      ? say('record.learn.volume.unknown')
      : say('record.learn.volume.known', { low: m3(now.low), high: m3(now.high) })
  }
  return (
    <Switch fallback={<p class="quiet">{say('record.learn.nothing')}</p>}>
      <Match when={narrowerOf(says())}>
        {(narrower) => {
          const by = () => say('record.learn.volume.by', { evidence: narrower().by.map(one) })
          const what = () =>
            say('record.learn.volume', {
              low: m3(narrower().interval.low),
              high: m3(narrower().interval.high),
              known: knownWords(),
            })
          return (
            <Proposal
              view={props.view}
              what={what()}
              edit={() =>
                acceptedVolume(
                  book.baseline(),
                  narrower().interval,
                  known(),
                  narrower().by,
                  props.view.number('volume'),
                  today(),
                  say('record.learn.provenance', { date: today() }),
                  by(),
                )
              }
            >
              <p class="quiet">{by()}</p>
            </Proposal>
          )
        }}
      </Match>
      <Match when={contradictionOf(says())}>
        {(between) => (
          <p class="warm">
            {say('record.learn.volume.contradiction', { first: one(between()[0]), second: one(between()[1]) })}
          </p>
        )}
      </Match>
      <Match when={againstOf(says())}>
        {(all) => (
          <p class="warm">
            {say(
              Number.isFinite(all().high)
                ? 'record.learn.volume.against_known'
                : 'record.learn.volume.against_known_open',
              {
                low: m3(all().low),
                high: m3(all().high),
                known: knownWords(),
              },
            )}
          </p>
        )}
      </Match>
      <Match when={asKnownOf(says())}>
        {(all) => (
          <p class="quiet">
            {say(Number.isFinite(all().high) ? 'record.learn.volume.as_known' : 'record.learn.volume.at_least', {
              count: evidence().length,
              low: m3(all().low),
              high: Number.isFinite(all().high) ? m3(all().high) : '',
            })}
          </p>
        )}
      </Match>
    </Switch>
  )
}

type Says = ReturnType<typeof narrowVolume>
const narrowerOf = (says: Says) => (says.kind === 'narrower' ? says : null)
const contradictionOf = (says: Says) => (says.kind === 'contradiction' ? says.between : null)
const againstOf = (says: Says) => (says.kind === 'against_known' ? says.all : null)
const asKnownOf = (says: Says) => (says.kind === 'as_known' ? says.all : null)

function Display(props: { view: RecordView }) {
  const { book, words } = props.view
  const says = createMemo(() => saltDisplay(book.notebook(), props.view.errorOf()))
  const kept = () =>
    Object.values(book.notebook().lessons)
      .filter(({ kind }) => kind === 'salt_display')
      .sort((a, b) => a.date.localeCompare(b.date))
      .at(-1)
  /** one that the correction in the record does not settle yet */
  const off = () => {
    const now = says()
    if (now.kind !== 'off') return null
    const by = kept()?.values.display_correction
    return by !== undefined && by >= now.by.low && by <= now.by.high ? null : now
  }
  const salt = (value: number) => words('salt', value)
  return (
    <>
      <Show when={kept()}>
        {(lesson) => (
          <p>{say('record.learn.display.kept', { by: salt(lesson().values.display_correction ?? Number.NaN) })}</p>
        )}
      </Show>
      <Switch>
        <Match when={off()}>
          {(found) => {
            const [least, most] = [() => Math.abs(found().by.low), () => Math.abs(found().by.high)]
            const what = () =>
              say('record.learn.display.off', {
                by: salt(Math.abs(found().by.value)),
                side: say(found().by.value > 0 ? 'record.learn.display.low' : 'record.learn.display.high'),
                count: found().pairs.length,
                low: salt(Math.min(least(), most())),
                high: salt(Math.max(least(), most())),
              })
            return (
              <Proposal
                view={props.view}
                what={what()}
                edit={() => ({
                  type: 'put_lesson',
                  lesson: {
                    id: newId(),
                    date: today(),
                    kind: 'salt_display',
                    values: {
                      display_correction: Math.round(found().by.value),
                      correction_low: found().by.low,
                      correction_high: found().by.high,
                    },
                    from: found()
                      .pairs.map(({ sample }) => sample.id)
                      .slice(0, 500),
                    note: what(),
                  },
                })}
              />
            )
          }}
        </Match>
        <Match when={says().kind === 'right'}>
          <p class="quiet">{say('record.learn.display.right', { count: pairsOf(says()) })}</p>
        </Match>
        <Match when={says().kind === 'wanders'}>
          <p class="warm">{say('record.learn.display.wanders', { count: pairsOf(says()) })}</p>
        </Match>
      </Switch>
    </>
  )
}

function pairsOf(says: ReturnType<typeof saltDisplay>): number {
  return says.kind === 'none' ? 0 : says.pairs.length
}

/** Something that the record teaches, and the act that takes it over. */
export function Proposal(props: {
  view: RecordView
  what: string
  edit: () => Edit
  onTaken?: () => void
  children?: JSX.Element
}) {
  const [refused, setRefused] = createSignal('')
  function accept(): void {
    const trouble = props.view.book.dispatch(props.edit())
    setRefused(trouble ? sentence(trouble) : '')
    if (trouble) return
    announce(say('record.learn.taken'))
    props.onTaken?.()
  }
  return (
    <div class="proposal">
      <p>{props.what}</p>
      {props.children}
      <button
        type="button"
        class="act main"
        disabled={!props.view.book.writable()}
        aria-label={say('record.learn.accept_what', { what: props.what })}
        onClick={accept}
      >
        {say('record.learn.accept')}
      </button>
      <Show when={refused()}>{(why) => <p class="warm">{why()}</p>}</Show>
    </div>
  )
}
