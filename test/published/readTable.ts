import { readFileSync } from 'node:fs'

/** A published table: `#` lines say where it is from, then a heading, then rows of numbers and names. */
export function readTable(file: string): Record<string, number | string>[] {
  const lines = readFileSync(new URL(file, import.meta.url), 'utf8')
    .trim()
    .split('\n')
  const [heading = '', ...rows] = lines.filter((line) => !line.startsWith('#'))
  const names = heading.split(',')
  return rows.map((row) => {
    const cells = row.split(',')
    return Object.fromEntries(
      names.map((name, i) => {
        const cell = cells[i] ?? ''
        return [name, cell === '' || Number.isNaN(Number(cell)) ? cell : Number(cell)]
      }),
    )
  })
}
