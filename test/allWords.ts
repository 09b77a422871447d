import { en } from '../src/words/en/catalogue'
import { addWords } from '../src/words/say'

// Tests see every text in one place, whichever page or command brings it.
addWords(en)
