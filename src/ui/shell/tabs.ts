/** What tabs of this browser tell each other. */
type Told = { readonly kind: 'forgotten'; readonly notebook: string }

const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('basinbook')

/** Tells the other tabs that a notebook was deleted: they must not show it, undo in it or write it back. */
export function tellForgotten(notebook: string): void {
  channel?.postMessage({ kind: 'forgotten', notebook } satisfies Told)
}

export function onForgotten(hear: (notebook: string) => void): void {
  channel?.addEventListener('message', ({ data }: MessageEvent<Told>) => {
    if (data?.kind === 'forgotten') hear(data.notebook)
  })
}
