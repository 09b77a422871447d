import { type BatchRequest, createBatchJob } from './batchJob'
import { transferableResults } from './results'

/** The second worker of the engine: long runs of columns go here, so that an edit of the notebook never waits. */
const answer = createBatchJob((message) =>
  postMessage(message, { transfer: message.kind === 'evaluated' ? transferableResults(message.results) : [] }),
)

addEventListener('message', ({ data }: MessageEvent<BatchRequest>) => {
  void answer(data)
})
