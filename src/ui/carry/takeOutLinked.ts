import { hasValue } from '../../engine/outcome'
import { followPlan } from '../../notebook/followPlan'
import { isFollowed } from '../../notebook/planLink'
import { removeLinkedScenario } from '../../notebook/unlink'
import { carry } from '../../words/en/carry'
import { addWords, say, sentence } from '../../words/say'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import { prepareFormulas } from '../shell/formulas'
import { planEnd } from './planEnd'
import { plansAtRest } from './planStates'

addWords(carry)

/** Takes a scenario out that others read, with the numbers that the engine gives last, and that its plan ends with now. */
export async function takeOutLinked(book: Book, scenario: string): Promise<void> {
  await prepareFormulas()
  if (isFollowed(book.notebook(), scenario)) {
    await plansAtRest(book)
    // What follows the last entry may not have begun yet.
    const { planOnce } = await import('../plan/planOnce')
    const last = followPlan(book.notebook(), book.catalog(), scenario, planEnd(await planOnce(book, scenario)))
    if (last) book.dispatch(last)
  }
  const outcome = await book.answered()
  const edit = removeLinkedScenario(book.notebook(), book.catalog(), scenario, (place) => {
    const stands = outcome(place.scenario, place.quantity)
    return hasValue(stands) ? stands.value : undefined
  })
  const trouble = book.dispatch(edit)
  announce(trouble ? sentence(trouble) : say('carry.links_turned'))
}
