import type { Column, Why } from '../../intake/understanding'
import { factsInWords, hasWords, say } from '../../words/say'

/** How sure it is that a column was understood, and the reasons as far as they have words. */
export function whyText({ role, confidence, why }: Pick<Column, 'role' | 'confidence' | 'why'>): string {
  const reasons = why.flatMap((reason) => {
    const key = `intake.why.${reason.code}`
    return hasWords(key) ? [say(key, inWords(reason))] : []
  })
  if (role !== 'quantity') return reasons.join(' ')
  const sure = confidence >= 0.9 ? 'sure' : confidence >= 0.6 ? 'likely' : 'unsure'
  return [say(`page.lab.${sure}`), ...reasons].join(' ')
}

/** A role is one of ours and has its word; a quantity is called as everywhere on the page. */
function inWords(reason: Why): Why['facts'] {
  const facts = factsInWords(reason)
  const role = `page.lab.role.${facts.role}`
  return hasWords(role) ? { ...facts, role: say(role) } : facts
}
