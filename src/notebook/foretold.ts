import type { Scenario } from './notebook'

/** Whether a scenario's water is one that was worked out: it has no reading that somebody took, and takes over none of the baseline's. */
export function isForetold(scenario: Scenario | undefined): boolean {
  return scenario?.foretold === true && scenario.sample === null
}
