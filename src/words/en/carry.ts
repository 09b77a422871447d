/** What is said where the water that is foretold becomes a scenario of its own. */
export const carry = {
  'carry.title': 'Carry the water of “{name}” forward',
  'carry.intro': 'A new scenario begins with the water that “{name}” ends with.',
  'carry.water': 'The water',
  'carry.water.dilution': 'after its dilution',
  'carry.water.ph_alkalinity': 'after its doses for pH and alkalinity',
  'carry.water.calcium': 'after its calcium dose',
  'carry.water.salt': 'after its bags of salt',
  'carry.nothing_foretold': 'nothing is foretold of it yet',
  'carry.several':
    'Each worksheet foretells its own dose alone. For several together, carry the end of the step plan forward: the plan’s own page offers it.',
  'carry.how': 'Its readings',
  'carry.how.live': 'follow “{name}”',
  'carry.how.live_says':
    'They are links: when “{name}” changes, so do they. Each cell is worked out after the cells that it reads, wherever the scenarios stand; if “{name}” is removed, the links become the numbers that they had.',
  'carry.how.numbers': 'are plain numbers',
  'carry.how.numbers_says':
    'They stay as they are now. They keep all the digits that were worked out and are shown to the row’s own.',
  'carry.new_name': 'Name of the new scenario',
  'carry.name.dilution': '{name}, diluted',
  'carry.name.ph_alkalinity': '{name}, balanced',
  'carry.name.calcium': '{name}, calcium added',
  'carry.name.salt': '{name}, salt added',
  'carry.name.plan': '{name}, after its plan',
  'carry.note.dilution': 'begins with what its dilution foretold of “{name}”',
  'carry.note.ph_alkalinity': 'begins with what its doses for pH and alkalinity foretold of “{name}”',
  'carry.note.calcium': 'begins with what its calcium dose foretold of “{name}”',
  'carry.note.salt': 'begins with what its bags of salt foretold of “{name}”',
  'carry.note.plan': 'begins with what the step plan foretold of “{name}”',
  'carry.col.reading': 'Reading',
  'carry.col.now': 'Now',
  'carry.col.then': 'In the new scenario',
  'carry.not_taken': 'not taken',
  'carry.stays': '{value}, as it was',
  'carry.not_carried':
    'What is not foretold counts as not taken, so that no reading of the old water stands in the new one: chlorine does not last, and meters that read the whole water have to read it again.',
  'carry.beside':
    'Pool, targets and products are those of “{name}”. The pH moves a little when salt goes in; the salt worksheet does not foretell it.',
  'carry.make': 'Make the scenario',
  'carry.cancel': 'Cancel',
  'carry.made': '“{name}” was made.',
  'carry.links_turned': 'The scenario was removed. What read it has the numbers that it had.',
  'carry.plan': 'Carry the end water forward',
  'carry.plan_says': 'A new scenario begins with the water that this plan ends with.',
  'carry.how.plan': 'follow the plan of “{name}”',
  'carry.how.plan_says':
    'When “{name}” changes, its plan is made again, and they become what that plan ends with; the new scenario is worked out after it. If “{name}” is removed, they become the numbers that they had.',
} as const
