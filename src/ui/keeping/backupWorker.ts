import { isMapping, readMapping } from '../../intake/mapping'
import { type Contents, checkBackup, type Judges } from '../../storage/backup/checkBackup'
import { type Backup, makeBackup } from '../../storage/backup/makeBackup'
import type { Progress } from '../../storage/backup/progress'
import { type Restored, restore } from '../../storage/backup/restore'
import type { Problem } from '../../words/problem'
import { problem } from '../../words/problem'
import { importFault } from '../lab/importSchema'

/** Where the name goes in what a thing is called whose own is taken. */
export const NAME = '{name}'

/** One piece of work at a time: gathering everything, looking through a backup, or taking one in; and the wish to stop it. No words are made here. */
export type BackupAsked =
  | { readonly do: 'make'; readonly states: boolean }
  | { readonly do: 'check'; readonly file: File }
  | { readonly do: 'restore'; readonly file: File; readonly whole: boolean; readonly renamed: string }
  | { readonly do: 'stop' }

export type BackupTold = { readonly at: number } | { readonly result: Backup | Contents | Restored | Problem }

/** Told at most so often, in milliseconds. */
const TELL_EVERY = 100

const judges: Judges = {
  lab: importFault,
  mapping(text) {
    const read = readMapping(text, 'mapping')
    return isMapping(read) ? null : (read[0] ?? problem('lab_mapping_unreadable', ['mapping']))
  },
}

const tell = (told: BackupTold): void => postMessage(told)

let running: AbortController | null = null

addEventListener('message', async ({ data }: MessageEvent<BackupAsked>) => {
  if (data.do === 'stop') {
    running?.abort()
    return
  }
  running = new AbortController()
  let last = 0
  const progress: Progress = {
    stop: running.signal,
    at(done) {
      if (performance.now() - last < TELL_EVERY) return
      last = performance.now()
      tell({ at: done })
    },
  }
  tell({ result: await work(data, progress) })
})

function work(
  asked: Exclude<BackupAsked, { readonly do: 'stop' }>,
  progress: Progress,
): Promise<Backup | Contents | Restored | Problem> {
  switch (asked.do) {
    case 'make':
      return makeBackup({ states: asked.states }, progress)
    case 'check':
      return checkBackup(asked.file, asked.file.name, judges, progress)
    case 'restore':
      return restore(
        asked.file,
        asked.file.name,
        {
          judges,
          whole: asked.whole,
          renamed: (name) => asked.renamed.replace(NAME, () => name.slice(0, 120)).slice(0, 200),
        },
        progress,
      )
  }
}
