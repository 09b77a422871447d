/** `notice.<code>.<name>`: what a mark on a cell says, where the mark is one of a worksheet's own checks or declared defaults. */
export const notices = {
  'notice.disagree.volume': 'The metered volume and the volume by shape are over 10 % apart.',
  'notice.disagree.total_chlorine': 'Free chlorine reads higher than total chlorine, which cannot be; test both again.',
  'notice.disagree.salt': 'The salt readings are over 400 mg/L apart.',
  'notice.disagree.tds': 'The dissolved solids as read and the sum of the ions are over 20 % apart.',
  'notice.assumed.borate': 'Borate was not tested for and is taken as 0.',
  'notice.assumed.cyanuric_acid': 'Cyanuric acid was not tested for and is taken as 0 in this worksheet.',
  'notice.assumed.air_co2': 'Carbon dioxide in the air was not measured and is taken as 420 ppm, as outdoors.',
} as const
