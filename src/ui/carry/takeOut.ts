import { isLinkedTo } from '../../notebook/linkedTo'
import { sentence } from '../../words/say'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import { ON_THEIR_WAY } from '../shell/formulas'

/** Takes a scenario out of the notebook; formulas elsewhere that read it get its numbers in the same edit. */
export async function takeOut(book: Book, scenario: string): Promise<void> {
  if (!isLinkedTo(book.notebook(), scenario)) {
    const trouble = book.dispatch({ type: 'remove_scenario', scenario })
    if (trouble) announce(sentence(trouble))
    return
  }
  try {
    const { takeOutLinked } = await import('./takeOutLinked')
    await takeOutLinked(book, scenario)
  } catch {
    announce(sentence(ON_THEIR_WAY))
  }
}
