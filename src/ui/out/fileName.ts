/** A file's name out of names that people gave, without what file systems refuse. */
export function fileName(notebook: string, part: string, ending: string): string {
  const plain = [notebook, part]
    .map((text) =>
      text
        .replace(/[\\/:*?"<>|\p{Cc}]+/gu, ' ')
        .replace(/\s+/g, ' ')
        .trim(),
    )
    .filter((text) => text !== '')
  return `${plain.join(', ') || 'notebook'}.${ending}`
}
