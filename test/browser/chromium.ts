import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'

const USUAL_PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome', '/snap/bin/chromium']

/**
 * The path of a Chromium: the one named by CHROMIUM, one in a usual place, else one that is installed now (Debian's
 * package, as root or through sudo).
 * @throws Error when there is none and none can be installed: browser tests are never skipped.
 */
export function findChromium(): string {
  const named = process.env.CHROMIUM
  if (named) {
    if (existsSync(named)) return named
    throw new Error(`CHROMIUM names ${named}, and there is no such file`)
  }
  const found = USUAL_PLACES.find(existsSync)
  if (found) return found
  const elevate = process.getuid?.() === 0 ? [] : ['sudo', '-n']
  const run = (...command: string[]) => {
    const [program = '', ...rest] = [...elevate, ...command]
    execFileSync(program, rest, {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    })
  }
  try {
    console.log('No Chromium found; installing the package "chromium".')
    run('apt-get', 'update', '-qq')
    run('apt-get', 'install', '-y', '-qq', 'chromium')
  } catch (error) {
    throw new Error(`The browser tests need Chromium. Install it, or set CHROMIUM to its path. (${String(error)})`)
  }
  const installed = USUAL_PLACES.find(existsSync)
  if (!installed)
    throw new Error(
      'The package "chromium" was installed, but no Chromium is in a usual place. Set CHROMIUM to its path.',
    )
  return installed
}
