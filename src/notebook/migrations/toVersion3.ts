import type { Migration } from './migration'

/** Version 3: a cell may follow the end of another scenario's step plan; a scenario says that its water is foretold. What version 2 has means the same. */
export const toVersion3: Migration = {
  notebook: (old) => (typeof old === 'object' ? { ...old, version: 3 } : old),
  edit: (old) => old,
}
