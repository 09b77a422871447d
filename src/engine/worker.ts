import type { Edit } from '../notebook/edit'
import { problem } from '../words/problem'
import { hasOwnParts, prepareOwnWorksheets } from '../worksheet/ownWorksheets'
import { Live } from './live'
import type { Answer, Request } from './messages'

/** So many changes at a time: the page reads a message in one go. */
const PART = 500

/** The engine's side of the conversation: one live notebook, requests answered in order. */
let live: Live | null = null
let answered: Promise<void> = Promise.resolve()

addEventListener('message', ({ data }: MessageEvent<Request>) => {
  answered = answered.then(() => tell(data))
})

async function tell(request: Request): Promise<void> {
  const { id } = request
  try {
    if (bringsWorksheets(request)) await prepareOwnWorksheets()
    const changes = answer(request)
    let at = 0
    do {
      const part = changes.slice(at, at + PART)
      at += PART
      postMessage({ id, changes: part, more: at < changes.length } satisfies Answer)
    } while (at < changes.length)
  } catch (error) {
    // The page starts a new worker from its document; what it needs to know is that this one is of no use any more.
    postMessage({ id, problem: problem('engine_failed', [], { why: String(error) }) } satisfies Answer)
  }
}

function bringsWorksheets(request: Request): boolean {
  if (request.ask === 'open') return hasOwnParts(request.notebook)
  const brings = (edit: Edit): boolean =>
    edit.type === 'put_worksheet' ||
    edit.type === 'put_row' ||
    (edit.type === 'go_back' && hasOwnParts(edit.to)) ||
    (edit.type === 'together' && edit.edits.some(brings))
  return request.ask === 'edit' && request.edits.some(brings)
}

function answer(request: Request) {
  if (request.ask === 'open') {
    live?.close()
    live = new Live(request.notebook)
    return live.all()
  }
  if (!live) throw new Error('no notebook is open')
  return request.ask === 'edit' ? live.edit(request.edits) : live.formulasUnder(request.cells)
}
