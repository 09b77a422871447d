/** How a long piece of work tells how far it is, and learns that it is to stop. */
export interface Progress {
  /** @param done of 1 */
  at(done: number): void
  readonly stop: AbortSignal
}
