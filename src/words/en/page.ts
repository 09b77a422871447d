/** What the page itself says: buttons, headings, states. */
export const page = {
  'page.codes_first': 'Local codes, the product label and licensed practice come first.',
} as const
