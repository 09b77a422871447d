/**
 * The worksheet `saturation`, its groups, and for each of its quantities `quantity.<name>.label` and `.help`; `choice.<name>.<id>`
 * for each of its choices; `verdict.<name>.below`, `.within`, `.above` where it has a band.
 */
export const quantitiesSaturation = {
  'worksheet.saturation.label': 'Saturation',
  'worksheet.saturation.help':
    'Whether this water would dissolve calcium carbonate from its surroundings or lay it down. Near zero is at rest; the salt in the water and the stabilizer are both allowed for.',
  'worksheet.saturation.example':
    'An invented pool at 25 °C reads pH 7.5, alkalinity 80, calcium 250, cyanuric acid 50 and salt 3200: its index lies under zero, and salt and stabilizer are the reason.',
  'group.saturation.readings': 'From the sample',
  'group.saturation.water': 'The water',
  'group.saturation.index': 'Indexes',
  'group.saturation.elsewhere': 'At another pH, in air, in the cold, at the cell',

  'quantity.cyanuric_acid_used.label': 'Cyanuric acid used',
  'quantity.cyanuric_acid_used.help': 'The reading; none where it was not tested for, in this worksheet only.',
  'quantity.carbonate_alkalinity.label': 'Carbonate alkalinity',
  'quantity.carbonate_alkalinity.help':
    'The part of total alkalinity that carbonate holds, without stabilizer and borate.',
  'quantity.ionic_strength.label': 'Ionic strength',
  'quantity.ionic_strength.help': 'How strongly the ions of the salt and the rest screen one another.',
  'quantity.ph_saturation.label': 'pH of saturation',
  'quantity.ph_saturation.help': 'The pH at which this water would be at rest by the Langelier index.',
  'quantity.lsi.label': 'Langelier index',
  'quantity.lsi.help':
    'pH less pH of saturation: under zero the water can dissolve calcium carbonate, over zero lay it down.',
  'verdict.lsi.below': 'The water is hungry for calcium and takes it from this shell.',
  'verdict.lsi.within': 'In range for this shell: the water takes no calcium from it and lays no scale on it.',
  'verdict.lsi.above': 'The water can lay down scale, on the cell and the heater first.',
  'quantity.table_index.label': 'Index by printed factors',
  'quantity.table_index.help':
    'As an operator works it out from the printed table; it knows salt only as dissolved solids.',
  'verdict.table_index.below': 'By the printed table the water is hungry for calcium.',
  'verdict.table_index.within': 'By the printed table the water is in range for this shell.',
  'verdict.table_index.above': 'By the printed table the water can lay down scale.',
  'quantity.ryznar.label': 'Ryznar index',
  'quantity.ryznar.help': 'Twice the pH of saturation less the pH: the lower, the more scale.',
  'quantity.calcite_si.label': 'Calcite index, all ions',
  'quantity.calcite_si.help': 'The same question answered with every ion pair; the third decimal means nothing.',
  'quantity.ccpp.label': 'Carbonate that would settle',
  'quantity.ccpp.help':
    'Calcium carbonate that comes out of the water until it is at rest; negative is what it would dissolve.',
  'quantity.target_lsi.label': 'Index wanted',
  'quantity.target_lsi.help': 'The Langelier index that the next row finds the pH for.',
  'quantity.ph_for_target_lsi.label': 'pH for it',
  'quantity.ph_for_target_lsi.help': 'The pH, by acid or base alone, at which the index is the one wanted.',
  'quantity.air_co2.label': 'Carbon dioxide in the air',
  'quantity.air_co2.help': 'Over the water; about 420 ppm outdoors, more in a hall with people.',
  'quantity.ph_against_air.label': 'pH against air',
  'quantity.ph_against_air.help': 'Where the pH goes by itself when the water stands in the air long enough.',
  'quantity.temperature_low.label': 'Lowest temperature',
  'quantity.temperature_low.help': 'The coldest that the water will be, at the heater’s rest or in winter.',
  'quantity.lsi_cold.label': 'Langelier index, cold',
  'quantity.lsi_cold.help': 'At the lowest temperature, if the pH stays.',
  'quantity.lsi_at_cell.label': 'Langelier index at the cell',
  'quantity.lsi_at_cell.help': 'At the plates of the salt cell, where the pH is about one higher.',
  'quantity.air_co2_used.label': 'Carbon dioxide used',
  'quantity.air_co2_used.help': 'The reading; 420 ppm where the pool is not indoors.',
} as const
