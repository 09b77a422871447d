import { transferable } from './columnar'
import { createIntake, type IntakeRequest } from './job'

/** The module worker that reads laboratory files; see `job.ts` for what is said between it and the page. */
const answer = createIntake(
  (message, transfer) => postMessage(message, { transfer: (transfer ?? []) as ArrayBuffer[] }),
  transferable,
)

addEventListener('message', (event: MessageEvent<IntakeRequest>) => {
  void answer(event.data)
})
