/** Milliseconds of work after which the page is given a turn: a frame has 16, and most of them are the page's own. */
const SLICE = 8

/** Long work on the page, cut into slices, so that the page answers between them. */
export interface Slices {
  /** whether this slice has had its time; then await `pause` */
  due(): boolean
  pause(): Promise<void>
}

export function createSlices(): Slices {
  let since = performance.now()
  return {
    due: () => performance.now() - since > SLICE,
    async pause() {
      await new Promise((next) => setTimeout(next))
      since = performance.now()
    },
  }
}
