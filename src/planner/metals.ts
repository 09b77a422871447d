import { lsiNow } from './amounts'
import { cautionsFor } from './cautions'
import { pass, roomToday } from './clock'
import { type Draft, holding, numberOf, rule, say, usable, verdict } from './draft'

/** Metal stains once it is oxidised: a sequestrant by its label first, then a wait. */
export function holdMetals(draft: Draft): void {
  const over = ['copper', 'iron'].filter((name) => {
    const most = rule(draft, 'metals', name)
    const reading = usable(draft, name)
    return most !== undefined && reading !== undefined && reading > most
  })
  if (over.length === 0) return
  draft.metals = true
  for (const name of over)
    verdict(draft, name, 'step', say('plan.verdict.high', { quantity: name, target: rule(draft, 'metals', name) ?? 0 }))
  if (numberOf(draft, 'sequestrant_days') !== undefined) return
  roomToday(draft, 'sequestrant')
  const hours = rule(draft, 'metals', 'wait_hours') ?? 0
  draft.steps.push({
    kind: 'dose',
    says: say('plan.step.sequestrant', { readings: over }),
    product: 'sequestrant',
    how: [say('plan.how.by_label'), say('plan.how.closed')],
    cautions: cautionsFor(draft, 'sequestrant'),
    pump: 'on',
    at: draft.hour,
    wait: hours,
    retest: over,
    rules: holding(draft, 'metals'),
    notices: [],
    water: draft.column,
    ...lsiNow(draft),
  })
  draft.column = new Map([...draft.column, ['sequestrant_days', 0]])
  pass(draft, hours)
}
