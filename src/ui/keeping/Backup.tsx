import { createSignal, Show } from 'solid-js'
import { newId } from '../../notebook/create'
import type { Contents } from '../../storage/backup/checkBackup'
import { faultProblem } from '../../storage/backup/faultProblem'
import type { Backup as Made } from '../../storage/backup/makeBackup'
import type { Restored } from '../../storage/backup/restore'
import { openExports } from '../../storage/exports'
import { backup } from '../../words/en/backup'
import { problemsIntake } from '../../words/en/problems-intake'
import { isProblem, type Problem } from '../../words/problem'
import { addWords, say } from '../../words/say'
import { timeText } from '../../words/written'
import { downloadBlob } from '../notebooks/downloadText'
import { FileButton } from '../notebooks/FileButton'
import { Problems } from '../notebooks/Problems'
import { useBook } from '../shell/book'
import { createBackupWork } from './createBackupWork'
import { hashOf } from './hashOf'

addWords(backup)
addWords(problemsIntake)

/** Everything into one file, and out of one again. */
export function Backup() {
  const book = useBook()
  const work = createBackupWork()
  const [doing, setDoing] = createSignal('')
  const [withStates, setWithStates] = createSignal(true)
  const [problem, setProblem] = createSignal<Problem | null>(null)
  const [said, setSaid] = createSignal('')
  const [chosen, setChosen] = createSignal<{ readonly file: File; readonly holds: Contents } | null>(null)

  /** Does one thing and shows what came of it; the progress line stands meanwhile. */
  async function run<Result>(what: string, act: () => Promise<Result | Problem>): Promise<Result | null> {
    setProblem(null)
    setSaid('')
    setDoing(what)
    const result = await act()
    setDoing('')
    if (!isProblem(result)) return result
    setProblem(result)
    return null
  }

  async function make(): Promise<void> {
    await book.settled()
    const made = await run('backup.making', () => work.ask<Made>({ do: 'make', states: withStates() }))
    if (made === null) return
    const file = `basinbook-${new Date().toISOString().slice(0, 16).replace(':', '')}.backup.gz`
    downloadBlob(file, made.file)
    const { notebooks, states, imports, mappings, damaged } = made
    const also = damaged > 0 ? ` ${say('backup.made_damaged', { count: damaged })}` : ''
    setSaid(say('backup.made', { file, notebooks, states, imports, mappings }) + also)
    const exports = await openExports()
    if (isProblem(exports)) return
    await exports.add({ id: newId(), notebook: null, file, when: Date.now(), sha256: await hashOf(made.file) })
    exports.close()
  }

  async function look(file: File): Promise<void> {
    setChosen(null)
    const holds = await run('backup.checking', () => work.ask<Contents>({ do: 'check', file }))
    setChosen(holds && { file, holds })
  }

  async function take(file: File, { made, faults }: Contents): Promise<void> {
    await book.settled()
    const renamed = say('backup.renamed', { name: '{name}', when: timeText(made) })
    const whole = faults.length === 0
    const taken = await run('backup.taking', () => work.ask<Restored>({ do: 'restore', file, whole, renamed }))
    if (taken === null) return
    setChosen(null)
    setSaid(say('backup.taken', { ...taken }))
  }

  const idle = () => doing() === ''
  return (
    <section>
      <h2>{say('backup.title')}</h2>
      <p class="intro">{say('backup.intro')}</p>
      <div class="acts">
        <button type="button" class="act main" disabled={!idle()} onClick={() => void make()}>
          {say('backup.make')}
        </button>
        <label class="check">
          <input
            type="checkbox"
            checked={withStates()}
            onChange={(event) => setWithStates(event.currentTarget.checked)}
          />
          {say('backup.with_states')}
        </label>
      </div>
      <h2>{say('backup.restore')}</h2>
      <p class="intro">{say('backup.restore_intro')}</p>
      <div class="acts">
        <FileButton
          label={say('backup.choose')}
          accept=".gz,application/gzip"
          disabled={!idle()}
          onFile={(file) => void look(file)}
        />
      </div>
      <Show when={!idle()}>
        <div class="acts">
          <label class="progress">
            {say(doing())}
            <progress max={1} value={work.at() ?? 0} aria-label={say('backup.progress')} />
          </label>
          <button type="button" class="act" onClick={() => work.stop()}>
            {say('backup.stop')}
          </button>
        </div>
      </Show>
      <Show when={idle() && chosen()} keyed>
        {({ file, holds }) => (
          <div class="holds" role="group" aria-label={file.name}>
            <p class="name">{file.name}</p>
            <p>
              {say('backup.holds', {
                when: timeText(holds.made),
                notebooks: holds.notebooks.length,
                states: holds.states,
                imports: holds.imports,
                mappings: holds.mappings,
              })}{' '}
              {say(holds.faults.length === 0 ? 'backup.whole' : 'backup.faults')}
            </p>
            <Show when={holds.damaged.length > 0}>
              <p>{say('backup.holds_damaged', { names: holds.damaged })}</p>
            </Show>
            <Problems problems={holds.faults.map((fault) => faultProblem(fault, file.name))} />
            <div class="acts">
              <button type="button" class="act main" onClick={() => void take(file, holds)}>
                {say(holds.faults.length === 0 ? 'backup.take' : 'backup.take_rest')}
              </button>
            </div>
          </div>
        )}
      </Show>
      <Problems problems={problem() ? [problem() as Problem] : []} />
      <p role="status" class="said">
        {said()}
      </p>
    </section>
  )
}
