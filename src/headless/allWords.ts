import { en } from '../words/en/catalogue'
import { addWords } from '../words/say'

// A command is one file and says what it likes; the parts of the catalogue only save a page its first load.
addWords(en)
