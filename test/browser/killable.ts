import { type ChildProcess, spawn } from 'node:child_process'
import { type Browser, chromium } from 'playwright-core'
import { inject, onTestFinished } from 'vitest'
import { FLAGS } from './open'

/** A Chromium with a profile of its own, as a process that can be killed. It does not outlive the test. */
export async function startChromium(folder: string): Promise<{ browser: Browser; process: ChildProcess }> {
  const child = spawn(
    inject('chromium'),
    [...FLAGS, '--headless', '--remote-debugging-port=0', `--user-data-dir=${folder}`, 'about:blank'],
    { stdio: ['ignore', 'ignore', 'pipe'] },
  )
  onTestFinished(() => void child.kill('SIGKILL'))
  const address = await new Promise<string>((resolve, reject) => {
    let said = ''
    child.stderr.on('data', (chunk: Buffer) => {
      said += chunk.toString()
      const [, found] = /listening on (ws:\S+)/.exec(said) ?? []
      if (found) resolve(found)
    })
    child.on('exit', () => reject(new Error(`Chromium ended: ${said}`)))
  })
  return { browser: await chromium.connectOverCDP(address), process: child }
}
