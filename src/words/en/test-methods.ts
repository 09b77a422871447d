/** Kinds of tests by which a reading is taken. */
export const testMethods = {
  'method.kit': 'Test kit',
  'method.comparator': 'Colour comparator',
  'method.strip': 'Test strip',
  'method.meter': 'Meter',
  'method.drop_test_25': 'Drop test, 25 mL sample',
  'method.drop_test_10': 'Drop test, 10 mL sample',
  'method.photometer': 'Photometer',
  'method.turbidity': 'Turbidity tube',
  'method.thermometer': 'Thermometer',
} as const
