import { hasValue } from '../../engine/outcome'
import { isFollowed } from '../../notebook/planLink'
import { removeLinkedScenario } from '../../notebook/unlink'
import { carry } from '../../words/en/carry'
import { addWords, say, sentence } from '../../words/say'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import { prepareFormulas } from '../shell/formulas'
import { plansAtRest } from './planStates'

addWords(carry)

/** Takes a scenario out that formulas read, with the numbers that the engine gives last. */
export async function takeOutLinked(book: Book, scenario: string): Promise<void> {
  await prepareFormulas()
  // The numbers that are left are those of the plan of the last edit.
  if (isFollowed(book.notebook(), scenario)) await plansAtRest(book)
  const outcome = await book.answered()
  const edit = removeLinkedScenario(book.notebook(), book.catalog(), scenario, (place) => {
    const stands = outcome(place.scenario, place.quantity)
    return hasValue(stands) ? stands.value : undefined
  })
  const trouble = book.dispatch(edit)
  announce(trouble ? sentence(trouble) : say('carry.links_turned'))
}
