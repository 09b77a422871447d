/** What became of cells that were pasted. */
export const pasteWords = {
  'page.paste.title': 'Pasted',
  'page.paste.taken': '{count|One cell|# cells} taken.',
  'page.paste.nothing_taken': 'Nothing was taken.',
  'page.paste.locked':
    '{count|One cell is worked out by the notebook and was left as it was|# cells are worked out by the notebook and were left as they were}.',
  'page.paste.beyond': '{count|One cell|# cells} beyond the last row or scenario found no place.',
  'page.paste.refused': '{count|One cell was|# cells were} refused:',
  'page.paste.one_refused': 'In “{scenario}”: {why}',
  'page.paste.more_refused': '{count|and one more|and # more}',
  'page.paste.same':
    '{count|One cell says|# cells say} what stands there already, and {count|was|were} left as {count|it was|they were}.',
  'page.paste.strangers': '{count|One cell|# cells} found no place by name.',
  'page.paste.no_row': 'This notebook has no row {names}.',
  'page.paste.no_scenario': 'This notebook has no scenario {names}.',
  'page.paste.name': '“{name}”',
  'problem.pasted_several':
    '{path}: several rows are called “{found}”, so it cannot be told which is meant. Paste it into its cells.',
  'page.paste.no_words': 'There is no text on the clipboard.',
  'page.paste.blocked': 'The browser does not let the page read the clipboard here. Press Ctrl V instead.',
  'page.paste.too_large': 'The clipboard holds {count} cells; at most {most} are taken at a time.',
  'problem.pasted_twice': '{path}: the same cell was pasted twice, with two contents. The first was kept.',
} as const
