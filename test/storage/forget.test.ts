import { openDB } from 'idb'
import { beforeEach, describe, expect, test } from 'vitest'
import { openExports } from '../../src/storage/exports'
import { forget } from '../../src/storage/forget'
import { openImports } from '../../src/storage/imports'
import { EMPTY } from '../notebook/samples'
import { freshBrowser, good, opened } from './setup'

beforeEach(freshBrowser)

const SECRET = 'Zebulon Quix'
const NONE = { removeImports: [], blankImports: [] }

/** Everything in every object store, as text; what is packed in bytes as their UTF-8. */
async function everything(): Promise<string> {
  const database = await openDB('basinbook')
  const texts: string[] = []
  for (const name of database.objectStoreNames) {
    for (const value of await database.getAll(name)) {
      texts.push(JSON.stringify(value, (_, part) => (part instanceof Uint8Array ? Buffer.from(part).toString() : part)))
      if (value.file instanceof Blob) texts.push(await value.file.text())
    }
  }
  database.close()
  return texts.join('\n')
}

async function filled(): Promise<void> {
  const store = await opened()
  good(await store.create({ ...EMPTY, name: SECRET, place: `${SECRET}’s place` }))
  for (let i = 0; i < 250; i++)
    good(await store.append('book', [{ type: 'change_notebook', set: { note: `${SECRET} called ${i}` } }]))
  good(await store.create({ ...EMPTY, id: 'other', name: 'Somebody else' }))
  store.close()
  const exports = good(await openExports())
  good(await exports.add({ id: 'e1', notebook: 'book', file: `${SECRET}.basinbook.json`, when: 1, sha256: 'ab' }))
  good(await exports.add({ id: 'e2', notebook: null, file: 'backup.zip', when: 2, sha256: 'cd' }))
  good(await exports.add({ id: 'e3', notebook: 'other', file: 'other.json', when: 3, sha256: 'ef' }))
  exports.close()
  const imports = good(await openImports<{ id: string; name: string }, unknown>())
  for (const id of ['i1', 'i2']) {
    const bytes = new TextEncoder().encode(SECRET)
    good(await imports.put({ id, name: `${id}.csv` }, { names: { bytes } }, new Blob([`${SECRET},7.2`])))
  }
  imports.close()
}

describe('forgetting a notebook', () => {
  test('leaves nothing of it in any object store', async () => {
    await filled()
    expect((await everything()).split(SECRET).length).toBeGreaterThan(100)
    const blank = { id: 'i2', head: { id: 'i2', name: 'i2.csv' }, body: { names: { bytes: new Uint8Array() } } }
    expect(await forget('book', { removeImports: ['i1'], blankImports: [blank] })).toBeUndefined()
    const left = await everything()
    expect(left).not.toContain(SECRET)
    expect(left).not.toContain('Zebulon')
    expect(left).toContain('Somebody else')
    expect(left).toContain('backup.zip')
    expect(left).toContain('other.json')
    expect(left).toContain('i2.csv')
    const store = await opened()
    expect(good(await store.list()).map(({ id }) => id)).toEqual(['other'])
    store.close()
  })

  test('leaves lab files alone unless they are named', async () => {
    await filled()
    await forget('book', NONE)
    const imports = good(await openImports<{ id: string }, unknown>())
    expect(good(await imports.list())).toHaveLength(2)
    imports.close()
    expect(await everything()).toContain(SECRET)
  })

  test('a tab that still has it open can write nothing back', async () => {
    await filled()
    const tab = await opened()
    good(await tab.load('book'))
    await forget('book', NONE)
    expect(await tab.append('book', [{ type: 'change_notebook', set: { note: SECRET } }])).toMatchObject({
      code: 'notebook_not_stored',
    })
    expect(await tab.load('book')).toMatchObject({ code: 'notebook_not_stored' })
    tab.close()
  })
})
