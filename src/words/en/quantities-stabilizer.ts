/**
 * The worksheet `stabilizer`, its groups, an example, and for each of its quantities `quantity.<name>.label` and `.help`;
 * `choice.<name>.<id>` for each of its choices; `verdict.<name>.below`, `.within`, `.above` where it has a band.
 */
export const quantitiesStabilizer = {
  'worksheet.stabilizer.label': 'Stabilizer and active chlorine',
  'worksheet.stabilizer.help':
    'How much of the free chlorine is active at this moment, and how much the stabilizer holds back. Two published models stand side by side; they differ by a third and more.',
  'worksheet.stabilizer.example':
    'An invented pool reads free chlorine 4, cyanuric acid 80, pH 7.5 at 25 °C. By the model of 2019 about 0.013 mg/L is active, by that of 1974 about 0.020: one part of free chlorine in two or three hundred works at a time, the rest waits its turn. The ratio is 20 : 1, which is still good.',
  'group.stabilizer.readings': 'From the sample',
  'group.stabilizer.active': 'Active chlorine',
  'group.stabilizer.ratio': 'Ratio',
  'group.stabilizer.wanted': 'For a wanted active chlorine',
  'group.stabilizer.dose': 'Stabilizer to add',
  'group.stabilizer.by_product': 'Stabilizer that chlorine products bring',

  'quantity.hocl_model.label': 'Model',
  'quantity.hocl_model.help':
    'The published model by which active chlorine is worked out; its figures are not to be mixed with another’s.',
  'choice.hocl_model.wahman_2019': 'Wahman and Alexander, 2019',
  'choice.hocl_model.obrien_1974': 'O’Brien, Morris and Butler, 1974',
  'quantity.hocl.label': 'Active chlorine (HOCl)',
  'quantity.hocl.help': 'Hypochlorous acid, the part of free chlorine that kills germs at once.',
  'verdict.hocl.below': 'Less active chlorine than that code asks for.',
  'verdict.hocl.within': 'As much active chlorine as that code asks for.',
  'verdict.hocl.above': 'More active chlorine than that code lets people bathe in.',
  'quantity.ocl.label': 'Hypochlorite (OCl⁻)',
  'quantity.ocl.help':
    'The other part that no stabilizer holds; it is weak, and turns into HOCl where that is used up.',
  'quantity.bound_chlorine.label': 'Held by stabilizer',
  'quantity.bound_chlorine.help': 'Free chlorine that is bound to cyanuric acid and let go as the rest is used up.',
  'quantity.hocl_obrien.label': 'Active chlorine, model of 1974',
  'quantity.hocl_obrien.help':
    'The same question by O’Brien, Morris and Butler at 25 °C, whatever the temperature of the pool.',
  'quantity.hocl_share.label': 'Active share',
  'quantity.hocl_share.help': 'Active chlorine as a share of free chlorine.',
  'quantity.cya_to_fc_ratio.label': 'Cyanuric acid to one of chlorine',
  'quantity.cya_to_fc_ratio.help':
    'Parts of cyanuric acid to one of free chlorine. 20 is the aim; over 45 one model code closes a pool.',
  'verdict.cya_to_fc_ratio.within': 'Chlorine keeps up with the stabilizer.',
  'verdict.cya_to_fc_ratio.above':
    'The stabilizer holds back more chlorine than is good; over 45 : 1 a code closes the pool.',
  'quantity.fc_to_cya_share.label': 'Chlorine as a share of cyanuric acid',
  'quantity.fc_to_cya_share.help': 'The same ratio the other way round; 20 : 1 is 0.05.',
  'quantity.target_hocl.label': 'Active chlorine wanted',
  'quantity.target_hocl.help': 'HOCl that is wanted. It belongs to the model by which it was derived.',
  'quantity.target_hocl_model.label': 'Derived by',
  'quantity.target_hocl_model.help':
    'The model by which the wanted HOCl was derived; where it is another than the one in use, there is no answer.',
  'choice.target_hocl_model.wahman_2019': 'Wahman and Alexander, 2019',
  'choice.target_hocl_model.obrien_1974': 'O’Brien, Morris and Butler, 1974',
  'quantity.free_chlorine_for_target_hocl.label': 'Free chlorine for it',
  'quantity.free_chlorine_for_target_hocl.help':
    'Free chlorine at which the active part is as wanted, with the stabilizer as it was read, by the same model.',
  'quantity.target_cyanuric_acid.label': 'Cyanuric acid wanted',
  'quantity.target_cyanuric_acid.help': 'It can be added, and only fresh water takes it out again.',
  'quantity.stabilizer_purity.label': 'Purity of the stabilizer',
  'quantity.stabilizer_purity.help': 'The share of the product that is cyanuric acid.',
  'quantity.cyanuric_acid_mass.label': 'Stabilizer to add',
  'quantity.cyanuric_acid_mass.help': 'All of it, for the volume as it stands; it goes in in parts and a week apart.',
  'quantity.cyanuric_acid_from_dichlor.label': 'A week of dichlor brings',
  'quantity.cyanuric_acid_from_dichlor.help': 'Cyanuric acid that seven days bring where dichlor meets the demand.',
  'quantity.cyanuric_acid_from_trichlor.label': 'A week of trichlor brings',
  'quantity.cyanuric_acid_from_trichlor.help': 'Cyanuric acid that seven days bring where trichlor meets the demand.',
  'quantity.stabilizer_pack_mass.label': 'Pack of stabilizer',
  'quantity.stabilizer_pack_mass.help': 'As sold; the plan then says whole packs and what is measured beside them.',
} as const
