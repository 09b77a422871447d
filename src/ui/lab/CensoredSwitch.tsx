import { say } from '../../words/say'
import { Switch } from '../rail/Switch'
import type { Censored } from './takeIn'

/** What stands for a reading such as <0.2; in a notebook it can stand as the limit that it is. */
export function CensoredSwitch(props: { value: Censored; keeps?: boolean; onChange: (value: Censored) => void }) {
  return (
    <Switch<Censored>
      label={say('page.lab.censored')}
      value={props.value}
      options={[
        ['leave_out', say(props.keeps ? 'page.lab.censored.keep' : 'page.lab.censored.leave_out')],
        ['limit', say('page.lab.censored.limit')],
        ['half', say('page.lab.censored.half')],
      ]}
      onChange={props.onChange}
    />
  )
}
