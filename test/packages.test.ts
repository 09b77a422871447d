import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'

interface Locked {
  readonly version: string
  readonly resolved?: string
  readonly integrity?: string
  readonly dev?: boolean
}

const lock = JSON.parse(readFileSync('package-lock.json', 'utf8')) as { packages: Record<string, Locked> }
const installed = Object.entries(lock.packages).filter(([path]) => path !== '')

/** Parts of the service worker: brought by a tool, so that the lock counts them as development, and yet they ship. */
const IN_SERVICE_WORKER = ['workbox-core', 'workbox-precaching', 'workbox-routing', 'workbox-strategies']

/**
 * Licences that the whole may be given under GPL-3.0-only with: the list of the Free Software Foundation
 * (gnu.org/licenses/license-list.html), `OFL-1.1` for typefaces only.
 */
const COMPATIBLE = new Set([
  'GPL-3.0-only',
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'CC0-1.0',
  '0BSD',
])

const nameOf = (path: string) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length)

interface Shipped {
  readonly name: string
  readonly version: string
  readonly licence: string
}

/** What ships, as it stands in the folder of packages. */
const shipped: readonly Shipped[] = installed
  .filter(([path, { dev }]) => dev !== true || IN_SERVICE_WORKER.includes(nameOf(path)))
  .filter(([path]) => existsSync(join(path, 'package.json')))
  .map(([path]) => {
    const told = JSON.parse(readFileSync(join(path, 'package.json'), 'utf8')) as Record<string, unknown>
    return { name: nameOf(path), version: String(told.version), licence: String(told.license) }
  })
  .sort((a, b) => (a.name < b.name ? -1 : 1))

describe('the packages', () => {
  test('are locked, each to one file of the registry by its hash', () => {
    const loose = installed.filter(
      ([, { resolved = 'https://registry.npmjs.org/', integrity = '' }]) =>
        !resolved.startsWith('https://registry.npmjs.org/') || !/^sha512-[A-Za-z0-9+/]{86}==$/.test(integrity),
    )
    expect(loose.map(([path]) => path)).toEqual([])
    expect(installed.length).toBeGreaterThan(100)
  })

  test('are installed in the version that is locked', () => {
    const other = shipped.filter(({ name, version }) => lock.packages[`node_modules/${name}`]?.version !== version)
    expect(other).toEqual([])
  })

  test('that ship are named by version in package.json, never by a range', () => {
    const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as {
      dependencies: Record<string, string>
    }
    expect(Object.entries(dependencies).filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([])
    expect(Object.keys(dependencies).filter((name) => !shipped.some((one) => one.name === name))).toEqual([])
  })

  test('that ship are under licences that go with GPL-3.0-only', () => {
    const against = shipped.filter(
      ({ name, licence }) => !COMPATIBLE.has(licence) && !(licence === 'OFL-1.1' && name.startsWith('@fontsource')),
    )
    expect(against).toEqual([])
  })

  test('that ship stand in licences.csv (after a change of packages: vitest run -u test/packages.test.ts)', async () => {
    const lines = shipped.map(({ name, version, licence }) => `${name},${version},${licence}\n`)
    await expect(`package,version,licence\n${lines.join('')}`).toMatchFileSnapshot('../licences.csv')
  })
})
