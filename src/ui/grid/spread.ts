/** A block laid out over a range: repeated where it fits into it a whole number of times, else as it is. */
export function spread<T>(
  block: readonly (readonly T[])[],
  range: { readonly rows: number; readonly columns: number },
): readonly (readonly T[])[] {
  const columns = block[0]?.length ?? 0
  const isEven = block.every((line) => line.length === columns)
  if (!isEven || columns === 0 || range.rows % block.length !== 0 || range.columns % columns !== 0) return block
  return Array.from({ length: range.rows }, (_, row) => {
    const line = block[row % block.length] ?? []
    return Array.from({ length: range.columns / columns }, () => line).flat()
  })
}
