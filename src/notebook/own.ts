/** A record's own entry: names such as `constructor` come out of files and must not find what every object has. */
export function own<T>(record: Readonly<Record<string, T>>, key: string): T | undefined {
  return Object.hasOwn(record, key) ? record[key] : undefined
}

/** The record with one entry more or other, sharing the rest. */
export function withEntry<T>(record: Readonly<Record<string, T>>, key: string, value: T): Readonly<Record<string, T>> {
  return { ...record, [key]: value }
}

/** The record with one entry less, sharing the rest. */
export function withoutEntry<T>(record: Readonly<Record<string, T>>, key: string): Readonly<Record<string, T>> {
  const { [key]: _, ...rest } = record
  return rest
}
