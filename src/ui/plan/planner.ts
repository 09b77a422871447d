import type { PlanAsked, PlanMade } from './planWorker'

type Asked = Omit<PlanAsked, 'id'>

/** Where the plans of one place on the page are asked for. One worker makes those of all, and ends with its last user. */
export interface Planner {
  /** null: no plan could be made, and the console says why. One that is asked for while an earlier one still waits takes its place. */
  ask(asked: Asked): Promise<PlanMade | null>
  close(): void
}

interface Turn {
  readonly asked: Asked
  readonly answer: (made: PlanMade | null) => void
}

let worker: Worker | null = null
let users = 0
let last = 0
/** by whom they were asked for, in the order in which they will be made */
const waiting = new Map<Planner, Turn>()
let running: Turn | null = null

export function openPlanner(): Planner {
  users += 1
  const planner: Planner = {
    ask: (asked) =>
      new Promise((answer) => {
        waiting.set(planner, { asked, answer })
        next()
      }),
    close() {
      waiting.delete(planner)
      users -= 1
      if (users > 0) return
      worker?.terminate()
      worker = null
      running = null
    },
  }
  return planner
}

function next(): void {
  const [first] = waiting
  if (running || !first) return
  const [planner, turn] = first
  waiting.delete(planner)
  running = turn
  last += 1
  started().postMessage({ id: last, ...turn.asked } satisfies PlanAsked)
}

function done(made: PlanMade | null): void {
  const turn = running
  running = null
  turn?.answer(made)
  next()
}

function started(): Worker {
  if (worker) return worker
  worker = new Worker(new URL('./planWorker.ts', import.meta.url), { type: 'module', name: 'planner' })
  worker.onmessage = ({ data }: MessageEvent<PlanMade>) => {
    if (data.id === last) done(data)
  }
  worker.onerror = () => done(null)
  return worker
}
