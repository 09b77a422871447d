import { keeping } from '../../words/en/keeping'
import { addWords, say } from '../../words/say'
import { useBook } from '../shell/book'
import { usePlace } from '../shell/place'
import { Backup } from './Backup'
import { EarlierStates } from './EarlierStates'
import './keeping.css'
import { Promised } from './Promised'

addWords(keeping)

/** How what was entered is kept: earlier states to go back to, a backup of everything, what the browser promises. */
export function KeepingPage() {
  const book = useBook()
  const place = usePlace()
  /** one that could not be opened is named in the address */
  const notebook = () => place().part ?? book.notebook().id
  return (
    <article class="text-page keeping">
      <h1>{say('page.title.keeping')}</h1>
      <p class="intro">{say('keeping.intro')}</p>
      <EarlierStates notebook={notebook()} />
      <Backup />
      <Promised />
    </article>
  )
}
