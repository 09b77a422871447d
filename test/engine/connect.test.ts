import { describe, expect, test, vi } from 'vitest'
import { connectEngine } from '../../src/engine/connect'
import type { Answer, Request } from '../../src/engine/messages'
import { newNotebook } from '../../src/notebook/create'
import { problem } from '../../src/words/problem'

/** A worker whose behaviour the test decides: it answers, it throws, or it says nothing. */
class StagedWorker {
  onmessage: ((event: { data: Answer }) => void) | null = null
  onerror: ((event: { message: string }) => void) | null = null
  readonly requests: Request[] = []
  terminated = false
  answers: (id: number) => readonly Answer[] = (id) => [{ id, changes: [], more: false }]
  constructor(readonly act: 'answer' | 'fail' | 'hang') {}
  postMessage(request: Request): void {
    this.requests.push(request)
    queueMicrotask(() => {
      if (this.act === 'answer') for (const data of this.answers(request.id)) this.onmessage?.({ data })
      if (this.act === 'fail') this.onerror?.({ message: 'out of memory' })
    })
  }
  terminate(): void {
    this.terminated = true
  }
}

function staged(...acts: StagedWorker['act'][]) {
  const workers: StagedWorker[] = []
  const client = connectEngine(() => {
    const worker = new StagedWorker(acts[workers.length] ?? 'answer')
    workers.push(worker)
    return worker as unknown as Worker
  }, 50)
  return { client, workers }
}

describe('the page’s end of the engine', () => {
  test('starts a crashed worker again from the document, edits included', async () => {
    const { client, workers } = staged('fail', 'answer')
    const restarted = vi.fn()
    client.onRestart(restarted)
    await client.open(newNotebook('Invented pool', 'As tested', 'metric'), () => undefined)
    await client.edit([{ type: 'change_notebook', set: { name: 'Renamed' } }])
    await vi.waitFor(() => expect(restarted).toHaveBeenCalled())
    expect(restarted.mock.calls[0]?.[0]).toMatchObject({ code: 'engine_failed' })
    expect(workers).toHaveLength(2)
    expect(workers[0]?.terminated).toBe(true)
    expect(workers[1]?.requests[0]).toMatchObject({ ask: 'open' })
  })

  test('hands a long answer on part by part, and an edit’s whole', async () => {
    const { client, workers } = staged('answer')
    const change = (quantity: string) => ({ scenario: 's', quantity, outcome: { value: 1, notices: [] } })
    const [one, two] = [change('ph'), change('temperature')]
    const answers = (id: number): readonly Answer[] => [
      { id, changes: [one], more: true },
      { id, changes: [two], more: false },
    ]
    if (workers[0]) workers[0].answers = answers
    const part = vi.fn()
    await client.open(newNotebook('Invented pool', 'As tested', 'metric'), part)
    expect(part.mock.calls).toEqual([[[one]], [[two]]])
    expect(await client.edit([{ type: 'change_notebook', set: { name: 'Renamed' } }])).toEqual([one, two])
  })

  test('stops a worker that does not answer in time', async () => {
    const { client, workers } = staged('hang', 'answer')
    const restarted = vi.fn()
    client.onRestart(restarted)
    await client.open(newNotebook('Invented pool', 'As tested', 'metric'), () => undefined)
    await vi.waitFor(() => expect(restarted).toHaveBeenCalled())
    expect(restarted.mock.calls[0]?.[0]).toMatchObject({ code: 'engine_slow' })
    expect(workers[0]?.terminated).toBe(true)
  })

  test('gives up on a document that stops every worker', async () => {
    const { client, workers } = staged('fail', 'fail', 'fail', 'fail', 'fail')
    const restarted = vi.fn()
    client.onRestart(restarted)
    await client.open(newNotebook('Invented pool', 'As tested', 'metric'), () => undefined)
    await vi.waitFor(() => expect(restarted.mock.calls.at(-1)?.[0]).toMatchObject({ code: 'engine_gave_up' }))
    expect(workers.length).toBeLessThan(5)
  })
})

describe('an edit that stops one worker after another', () => {
  test('is taken back before the third is started, and what took it back is what the third opens', async () => {
    const { client, workers } = staged('answer', 'hang', 'answer')
    const restarted = vi.fn()
    client.onRestart(restarted)
    await client.open(newNotebook('Invented pool', 'As tested', 'metric'), () => undefined)
    if (workers[0]) Object.assign(workers[0], { act: 'hang' })
    const took = vi.fn(() => {
      void client.edit([{ type: 'change_notebook', set: { name: 'As before' } }])
      return problem('engine_runaway', [], { what: 'the name' })
    })
    client.onRunaway(took)
    const edit = { type: 'change_notebook', set: { name: 'Runaway' } } as const
    await client.edit([edit])
    await vi.waitFor(() => expect(restarted).toHaveBeenCalled())
    expect(took).toHaveBeenCalledExactlyOnceWith([edit])
    expect(restarted.mock.calls[0]?.[0]).toMatchObject({ code: 'engine_runaway' })
    const opened = workers.map(({ requests }) => requests.find(({ ask }) => ask === 'open'))
    expect(opened.map((request) => request?.ask === 'open' && request.notebook.name)).toEqual([
      'Invented pool',
      'Runaway',
      'As before',
    ])
  })

  test('is kept where the next worker can open it: the first was only gone', async () => {
    const { client, workers } = staged('answer', 'answer')
    const took = vi.fn(() => null)
    client.onRunaway(took)
    const restarted = vi.fn()
    client.onRestart(restarted)
    await client.open(newNotebook('Invented pool', 'As tested', 'metric'), () => undefined)
    if (workers[0]) Object.assign(workers[0], { act: 'hang' })
    await client.edit([{ type: 'change_notebook', set: { name: 'Renamed' } }])
    await vi.waitFor(() => expect(restarted).toHaveBeenCalled())
    expect(took).not.toHaveBeenCalled()
    expect(restarted.mock.calls[0]?.[0]).toMatchObject({ code: 'engine_slow' })
  })
})
