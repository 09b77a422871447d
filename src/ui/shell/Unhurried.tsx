import type { JSX } from 'solid-js'
import { BookContext, useBook } from './book'

/** What is in here reads values a moment after the grid has them. */
export function Unhurried(props: { children: JSX.Element }) {
  return <BookContext.Provider value={useBook().unhurried}>{props.children}</BookContext.Provider>
}
