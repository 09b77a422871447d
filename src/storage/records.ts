import type { DBSchema } from 'idb'

/** A notebook as the list shows it, and how far its log goes. */
export interface Entry {
  readonly id: string
  readonly name: string
  readonly place: string
  /** what it is searched by: see `searched.ts` */
  readonly words: string
  /** when it was last written, milliseconds since 1970 */
  readonly changed: number
  /** sequence number of its last edit; 0 when there is none yet */
  readonly head: number
  /** sequence number of its latest snapshot */
  readonly snapshot: number
}

/** One edit. Records of one notebook are numbered without a gap. */
export interface LogRecord {
  readonly notebook: string
  readonly seq: number
  /** version of the notebook format in which the edit is written */
  readonly format: number
  readonly edit: unknown
}

/** The whole notebook after the edit `seq`, as the text of a notebook file, which carries its own version. */
export interface Snapshot {
  readonly notebook: string
  readonly seq: number
  readonly text: string
}

/** A notebook as it once was, to go back to. */
export interface State {
  readonly notebook: string
  /** the edit after which it was so */
  readonly seq: number
  /** when that edit was kept, milliseconds since 1970 */
  readonly at: number
  /** a notebook file, which carries its own version */
  readonly text: string
}

/** What the list shows of a lab file that was kept. */
export interface StoredImport {
  readonly id: string
  /** milliseconds since 1970 */
  readonly kept: number
  readonly head: unknown
}

/** Its samples as columns, written once. */
export interface StoredColumns {
  readonly id: string
  readonly body: unknown
}

/** The file that it was read from, byte for byte. */
export interface StoredFile {
  readonly id: string
  readonly file: Blob
}

/** How one laboratory's files are read, under a name: the text of a mapping file. */
export interface KeptMapping {
  readonly name: string
  readonly kept: number
  readonly text: string
}

/** A file that was saved from here: of one notebook, or of everything where `notebook` is null. */
export interface StoredExport {
  readonly id: string
  readonly notebook: string | null
  readonly file: string
  /** milliseconds since 1970 */
  readonly when: number
  /** SHA-256 of its bytes in hexadecimal; empty where the browser could not work it out */
  readonly sha256: string
}

export interface Schema extends DBSchema {
  notebooks: { key: string; value: Entry }
  log: { key: [string, number]; value: LogRecord }
  snapshots: { key: [string, number]; value: Snapshot }
  states: { key: [string, number]; value: State }
  imports: { key: string; value: StoredImport }
  import_columns: { key: string; value: StoredColumns }
  mappings: { key: string; value: KeptMapping }
  import_files: { key: string; value: StoredFile }
  exports: { key: string; value: StoredExport }
}

/** of notebooks, and of lab files */
export const STORES = ['notebooks', 'log', 'snapshots', 'states'] as const
export const LAB_STORES = ['imports', 'import_columns', 'import_files', 'mappings'] as const
