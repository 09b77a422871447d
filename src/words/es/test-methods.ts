export const testMethods = {
  'method.kit': 'Estuche de análisis',
  'method.comparator': 'Comparador de color',
  'method.strip': 'Tira de análisis',
  'method.meter': 'Medidor',
  'method.drop_test_25': 'Análisis por gotas, muestra de 25 mL',
  'method.drop_test_10': 'Análisis por gotas, muestra de 10 mL',
  'method.photometer': 'Fotómetro',
  'method.turbidity': 'Tubo de turbidez',
  'method.thermometer': 'Termómetro',
} as const
