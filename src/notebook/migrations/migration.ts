/** What takes a document, and an edit, from one version of the format to the next. Each is pure and knows its one step only. */
export interface Migration {
  readonly notebook: (old: unknown) => unknown
  readonly edit: (old: unknown) => unknown
}
