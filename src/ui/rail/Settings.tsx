import type { Profile } from '../../notebook/notebook'
import { type Language, locale } from '../../words/locale'
import { say } from '../../words/say'
import { useBook } from '../shell/book'
import { speak } from '../shell/language'
import { type Paper, paper, setPaper } from '../shell/paper'
import { Switch } from './Switch'

/** How numbers and paper are shown. */
export function Settings() {
  const book = useBook()
  return (
    <div class="settings">
      <Switch<Profile>
        label={say('page.units')}
        value={book.notebook().profile}
        options={[
          ['us', say('page.units.us')],
          ['metric', say('page.units.metric')],
        ]}
        disabled={!book.writable()}
        onChange={(profile) => book.dispatch({ type: 'change_notebook', set: { profile } })}
      />
      <Switch<Paper>
        label={say('page.paper')}
        value={paper()}
        options={[
          ['light', say('page.paper.light')],
          ['dark', say('page.paper.dark')],
          ['system', say('page.paper.system')],
        ]}
        onChange={setPaper}
      />
      <Switch<Language>
        label={say('page.language')}
        value={locale().language}
        options={[
          ['en', 'English'],
          ['es', 'Español'],
        ]}
        onChange={(language) => void speak({ language }, book.settled)}
      />
      <Switch<'.' | ','>
        label={say('page.numbers')}
        value={locale().decimal}
        options={[
          ['.', '7.4'],
          [',', '7,4'],
        ]}
        onChange={(decimal) => void speak({ decimal }, book.settled)}
      />
    </div>
  )
}
