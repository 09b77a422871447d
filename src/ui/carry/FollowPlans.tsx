import { createEffect, createMemo, For, on, onCleanup } from 'solid-js'
import { followPlan } from '../../notebook/followPlan'
import type { Cell } from '../../notebook/notebook'
import { planOf, plansFollowed } from '../../notebook/planLink'
import { createPlan } from '../plan/createPlan'
import { useBook } from '../shell/book'
import { drawnLater } from '../shell/drawnLater'
import { sameList } from '../shell/sameList'
import { planEnd } from './planEnd'
import { setPlanState } from './planStates'

/**
 * Keeps the scenarios that follow another's plan at what that plan ends with. Shows nothing itself. A chain of them comes
 * to rest from its beginning on: no plan is followed in a circle.
 */
export function FollowPlans() {
  const book = useBook()
  const entered = drawnLater(book.notebook)
  const sources = createMemo<readonly string[]>(() => plansFollowed(entered()), [], { equals: sameList })
  return <For each={sources()}>{(source) => <FollowPlan source={source} />}</For>
}

function FollowPlan(props: { source: string }) {
  const book = useBook().unhurried
  // One of these is of one scenario.
  const { source } = props
  const { planned, due } = createPlan(book, () => source)
  const entered = drawnLater(book.notebook)
  const followers = createMemo<readonly Cell[]>(
    () => Object.values(entered().cells).filter((cell) => planOf(cell) === source),
    [],
    { equals: sameList },
  )
  onCleanup(() => setPlanState(source, null))
  createEffect(
    on([planned, due, followers], ([now, due]) => {
      if (now === 'making' || due) {
        setPlanState(source, 'due')
        return
      }
      const edit =
        book.writable() && followPlan(book.notebook(), book.catalog(), source, planEnd(now === 'none' ? null : now))
      setPlanState(source, edit ? book.dispatch(edit) : null)
    }),
  )
  return null
}
