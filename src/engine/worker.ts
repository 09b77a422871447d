import { problem } from '../words/problem'
import { Live } from './live'
import type { Answer, Request } from './messages'

/** The engine's side of the conversation: one live notebook, requests answered in order. */
let live: Live | null = null

addEventListener('message', ({ data }: MessageEvent<Request>) => {
  try {
    postMessage({ id: data.id, changes: answer(data) } satisfies Answer)
  } catch (error) {
    // The page starts a new worker from its document; what it needs to know is that this one is of no use any more.
    postMessage({ id: data.id, problem: problem('engine_failed', [], { why: String(error) }) } satisfies Answer)
  }
})

function answer(request: Request) {
  if (request.ask === 'open') {
    live?.close()
    live = new Live(request.notebook)
    return live.all()
  }
  if (!live) throw new Error('no notebook is open')
  return live.edit(request.edits)
}
