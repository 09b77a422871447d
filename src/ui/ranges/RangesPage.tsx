import './ranges.css'
import { planRules } from '../../words/en/plan-rules'
import { ranges } from '../../words/en/ranges'
import { ruleValues } from '../../words/en/rule-values'
import { addWords, say } from '../../words/say'
import { RangeSets } from './RangeSets'
import { RuleValues } from './RuleValues'

addWords({ ...ranges, ...planRules, ...ruleValues })

/** What counts as in range, and what the plan goes by; both with copies that a reader changes. */
export function RangesPage() {
  return (
    <article class="text-page ranges">
      <h1>{say('page.title.ranges')}</h1>
      <p class="intro">{say('page.ranges.intro')}</p>
      <RangeSets />
      <RuleValues />
    </article>
  )
}
