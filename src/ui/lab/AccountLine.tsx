import type { Account } from '../../intake/account'
import { hasWords, say } from '../../words/say'

/** What became of all rows: the parts always add up to the whole. */
export function AccountLine(props: { account: Account }) {
  const skipped = () =>
    Object.entries(props.account.skippedBy)
      .map(([rule, count]) => {
        const key = `intake.skipped.${rule}`
        return `${count} ${hasWords(key) ? say(key) : rule}`
      })
      .join(', ')
  return (
    <>
      <p class="account" role="status">
        {say('page.lab.account', {
          rows: props.account.rows,
          samples: props.account.samples,
          refused: props.account.refused,
          skipped: props.account.skipped,
        })}
      </p>
      <p class="quiet">{skipped() && say('page.lab.skipped', { what: skipped() })}</p>
    </>
  )
}
