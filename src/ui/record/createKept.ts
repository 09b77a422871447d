import { type Accessor, createMemo } from 'solid-js'
import type { PlanRecord } from '../../notebook/record'
import type { Column } from '../../planner/bench'
import type { Plan } from '../../planner/step'
import { recordWords } from '../../words/en/record'
import type { Problem } from '../../words/problem'
import { addWords, say } from '../../words/say'
import type { Reader } from '../plan/planSentence'
import { useBook } from '../shell/book'
import { dateWords } from './dateWords'
import { givenPlan, keptAs } from './givenPlan'
import { keepPlan } from './keepPlan'
import { thisMinute } from './today'

addWords(recordWords)

/** The plan on the page and the record: whether it stands there as it is now, and the act that puts it there. */
export interface Kept {
  readonly kept: Accessor<PlanRecord | null>
  keep(): Problem | null
}

export function createKept(
  plan: Accessor<Plan | null>,
  scenario: Accessor<string>,
  column: Accessor<Column | null>,
  reader: Accessor<Reader>,
): Kept {
  const book = useBook()
  const given = createMemo(() => {
    const [now, water] = [plan(), column()]
    return now === null || water === null ? null : givenPlan(now, water, reader())
  })
  return {
    kept: createMemo(() => {
      const now = given()
      return now && keptAs(book.notebook().plans, book.scenario(scenario())?.name ?? '', now)
    }),
    keep() {
      const now = given()
      if (now === null) return null
      const date = thisMinute()
      const name = say('record.plan.sample_name', { when: dateWords(date) })
      const { edits } = keepPlan(book.notebook(), book.catalog(), scenario(), now, date, name)
      return book.dispatch({ type: 'together', edits })
    },
  }
}
