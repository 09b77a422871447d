/** What the grid says as a place to work: ranges, folding, columns. */
export const gridWords = {
  'page.grid.range': '{rows|one row|# rows} by {scenarios|one scenario|# scenarios} selected',
  'page.grid.cleared': '{count|one entry|# entries} taken out',
  'page.grid.filled': '{count|one cell|# cells} filled',
  'page.grid.copied': '{count|one cell|# cells} copied',
  'page.grid.cut': '{count|one cell|# cells} copied and cleared',
  'page.grid.and_left': '{done}; {left|one worked-out cell was|# worked-out cells were} left as {left|it is|they are}',
  'page.grid.cells': 'Cells',
  'page.grid.find': 'Find',
  'page.grid.width_of': 'Width of “{name}”',
  'page.scenario.width': 'Change the width',
  'page.rows_folded': '{count|one row|# rows}',
  'page.state.typed': 'entered here',
  'page.state.assumed': 'assumed',
  'page.state.sample': 'from the sample',
  'page.state.baseline': 'follows the baseline',
  'page.state.default': 'the worksheet’s own value',
} as const
