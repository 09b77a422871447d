/** Finding a quantity by its name. */
export const findWords = {
  'page.find.title': 'Find a quantity',
  'page.find.label': 'Part of its name',
  'page.find.count': '{count|one quantity|# quantities}',
  'page.find.none': 'No quantity has that in its name.',
  'page.find.more': 'and {count} more',
} as const
