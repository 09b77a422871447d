export const notices = {
  'notice.disagree.volume': 'El volumen por contador y el volumen por la forma difieren en más de un 10 %.',
  'notice.disagree.total_chlorine':
    'El cloro libre da más que el cloro total, lo que no puede ser; mida otra vez los dos.',
  'notice.disagree.salt': 'Las mediciones de sal difieren en más de 400 mg/L.',
  'notice.disagree.tds': 'Los sólidos disueltos medidos y la suma de los iones difieren en más de un 20 %.',
  'notice.assumed.borate': 'El borato no se midió y se toma como 0.',
  'notice.assumed.cyanuric_acid': 'El ácido cianúrico no se midió y en esta hoja se toma como 0.',
  'notice.assumed.air_co2': 'El dióxido de carbono del aire no se midió y se toma como 420 ppm, como al aire libre.',
} as const
