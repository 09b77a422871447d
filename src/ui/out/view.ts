import type { Book } from '../shell/book'

/** As much of an open notebook as has to be seen to write it down. */
export type View = Pick<Book, 'notebook' | 'catalog' | 'scenarios' | 'baseline' | 'outcome' | 'source' | 'unit'>
