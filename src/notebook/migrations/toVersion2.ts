import type { Migration } from './migration'

/** What a notebook of version 2 has and one of version 1 did not, as it is where nobody has put anything into it. */
const NEW_PARTS = {
  place: '',
  rows: {},
  plans: {},
  additions: {},
  remarks: {},
  lessons: {},
  charts: {},
  precisions: {},
  cases: {},
  rules: {},
}

/** Version 2: where the pool stands, to find it by; the pool's record. Edits of version 1 are edits of version 2. */
export const toVersion2: Migration = {
  notebook: (old) => (typeof old === 'object' ? { ...NEW_PARTS, ...old, version: 2 } : old),
  edit: (old) => old,
}
