import type { PlanAsked, PlanMade } from './planWorker'

/** Where plans are asked for. One worker makes them all, one after another, and ends with its last user. */
export interface Planner {
  /** null: no plan could be made, and the console says why */
  ask(asked: Omit<PlanAsked, 'id'>): Promise<PlanMade | null>
  close(): void
}

let worker: Worker | null = null
let users = 0
let last = 0
const waiting = new Map<number, (made: PlanMade | null) => void>()

export function openPlanner(): Planner {
  users += 1
  return {
    ask(asked) {
      const id = ++last
      const answer = new Promise<PlanMade | null>((resolve) => waiting.set(id, resolve))
      running().postMessage({ id, ...asked } satisfies PlanAsked)
      return answer
    },
    close() {
      users -= 1
      if (users > 0) return
      worker?.terminate()
      worker = null
      waiting.clear()
    },
  }
}

function running(): Worker {
  if (worker) return worker
  worker = new Worker(new URL('./planWorker.ts', import.meta.url), { type: 'module', name: 'planner' })
  worker.onmessage = ({ data }: MessageEvent<PlanMade>) => {
    waiting.get(data.id)?.(data)
    waiting.delete(data.id)
  }
  worker.onerror = () => {
    for (const answer of waiting.values()) answer(null)
    waiting.clear()
  }
  return worker
}
