import { createSignal } from 'solid-js'

/** Which samples are chosen: one byte a sample, so that choosing one or all of many thousands costs next to nothing. */
export interface Chosen {
  /** tracked */
  has(sample: number): boolean
  /** tracked */
  count(): number
  set(sample: number, on: boolean): void
  /** of all samples these and no others */
  only(samples: Int32Array): void
  /** in the order of the file */
  list(): readonly number[]
}

export function createChosen(size: number): Chosen {
  const marks = new Uint8Array(size)
  const [count, setCount] = createSignal(0, { equals: false })
  return {
    has: (sample) => count() > 0 && marks[sample] === 1,
    count,
    set(sample, on) {
      if ((marks[sample] === 1) === on) return
      marks[sample] = on ? 1 : 0
      setCount((now) => now + (on ? 1 : -1))
    },
    only(samples) {
      marks.fill(0)
      for (const sample of samples) marks[sample] = 1
      setCount(samples.length)
    },
    list() {
      const list: number[] = []
      marks.forEach((mark, sample) => {
        if (mark === 1) list.push(sample)
      })
      return list
    },
  }
}
