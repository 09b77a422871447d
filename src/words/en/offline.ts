/** What the page says when a newer version of it waits. */
export const offline = {
  'page.version.waits': 'A newer version of this page is ready. What you entered stays.',
  'page.version.take': 'Use the newer version',
  'page.version.not_kept':
    'Something on this page is not saved yet. Save the notebook to a file or finish the entry, then try again.',
  'page.version.other_tab':
    'Another tab has an entry that is not finished or not saved. Look at it or close it, then try again.',
} as const
