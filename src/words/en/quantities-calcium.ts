/** The worksheet `calcium`: keys as in `quantities-stabilizer.ts`. */
export const quantitiesCalcium = {
  'worksheet.calcium.label': 'Calcium',
  'worksheet.calcium.help':
    'Calcium chloride for a wanted hardness, and the index that the water then has. Only fresh water takes calcium out; see dilution.',
  'worksheet.calcium.example':
    'An invented plaster pool of 37.85 m³ (10 000 US gal) reads 150; 200 is wanted. With calcium chloride of 77 % that is 2.73 kg, or 6 lb: into a bucket of cold water in portions, poured round the edge.',
  'group.calcium.wanted': 'Wanted',
  'group.calcium.dose': 'Calcium to add',
  'group.calcium.after': 'The water after',

  'quantity.target_calcium_hardness.label': 'Calcium hardness wanted',
  'quantity.target_calcium_hardness.help': 'What this shell needs; a vinyl wall has no calcium to lose.',
  'quantity.calcium_product.label': 'Calcium product',
  'quantity.calcium_product.help': 'What the strength on its label counts.',
  'choice.calcium_product.calcium_chloride': 'calcium chloride, counted dry',
  'choice.calcium_product.calcium_chloride_dihydrate': 'calcium chloride dihydrate',
  'quantity.calcium_product_mass.label': 'Calcium product to add',
  'quantity.calcium_product_mass.help': 'All of it, for the volume as it stands; at most 50 mg/L in a day.',
  'quantity.calcium_hardness_after.label': 'Calcium hardness after',
  'quantity.calcium_hardness_after.help': 'With all of it dissolved and mixed.',
  'quantity.lsi_after_calcium.label': 'Langelier index after',
  'quantity.lsi_after_calcium.help': 'With all of it dissolved, before any of it settles.',
  'verdict.lsi_after_calcium.within': 'The water can take that calcium.',
  'verdict.lsi_after_calcium.above': 'The water would lay that calcium down as scale: pH comes first.',
  'quantity.ph_after_calcium.label': 'pH after',
  'quantity.ph_after_calcium.help': 'Calcium pairs with carbonate and lowers the pH a little.',
  'quantity.salt_after_calcium.label': 'Salt after',
  'quantity.salt_after_calcium.help': 'As a strip reads it: the product’s chloride counts as salt.',
  'quantity.calcium_pack_mass.label': 'Pack of calcium chloride',
  'quantity.calcium_pack_mass.help': 'As sold; the plan then says whole packs and what is measured beside them.',
} as const
