import type { StudyRequest } from './studies'
import { createStudyJob } from './studyJob'

/** Where studies run: the same formulas as in the notebook's own worker, which never waits for them. */
const answer = createStudyJob((message) => postMessage(message))

addEventListener('message', ({ data }: MessageEvent<StudyRequest>) => {
  void answer(data)
})
