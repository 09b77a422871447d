import { PRODUCT_IDS } from '../../src/chemistry/products'

/** The contract's quantities with their units: inputs, then computed ones in the order of its columns. */
export const CONTRACT: Readonly<Record<string, readonly [inputs: string, computed: string]>> = {
  pool: [
    `water_body choice, shell choice, shell_age day, setting choice, use choice, sanitizer choice, shape choice, length m,
     width m, diameter m, depth_shallow m, depth_deep m, hopper_length m, hopper_width m, hopper_depth m, surface_area m²,
     measured_volume m³, salt_mass_added kg, salt_before mg/L as NaCl, pump_flow m³/h, pump_hours h/day, air_temperature °C,
     relative_humidity 1, wind_speed m/s`,
    `volume m³, volume_low m³, volume_high m³, volume_from_salt_rise m³, water_depth_mean m, turnover_time h,
     turnovers_per_day 1/day, evaporation L/day`,
  ],
  sample: [
    `ph pH, temperature °C, free_chlorine mg/L as Cl2, total_chlorine mg/L as Cl2, total_alkalinity mg/L as CaCO3,
     calcium_hardness mg/L as CaCO3, total_hardness mg/L as CaCO3, cyanuric_acid mg/L, borate mg/L as B, magnesium mg/L,
     sulfate mg/L, chloride mg/L, salt mg/L as NaCl, cell_salt_reading mg/L as NaCl, conductivity µS/cm, tds mg/L,
     phosphate mg/L as PO4, copper mg/L, iron mg/L, manganese mg/L, ammonia mg/L as N, bromine mg/L as Br2, orp mV,
     turbidity NTU, sample_age h, bottle_temperature °C, chlorine_sample_dilution 1, alkalinity_bottle choice`,
    `combined_chlorine mg/L as Cl2, salt_from_conductivity mg/L as NaCl, salt_from_chloride mg/L as NaCl,
     salt_disagreement mg/L as NaCl, salt_used mg/L as NaCl, tds_used mg/L, borate_used mg/L as B`,
  ],
  saturation: [
    'target_lsi 1, temperature_low °C, air_co2 ppm (air)',
    `cyanuric_acid_used mg/L, carbonate_alkalinity mg/L as CaCO3, ionic_strength mol/L, ph_saturation pH, lsi 1,
     table_index 1, ryznar 1, calcite_si 1, ccpp mg/L as CaCO3, ph_for_target_lsi pH, ph_against_air pH, lsi_cold 1,
     lsi_at_cell 1`,
  ],
  stabilizer: [
    'hocl_model choice, target_hocl mg/L as Cl2, target_cyanuric_acid mg/L, stabilizer_purity 1',
    `hocl mg/L as Cl2, ocl mg/L as Cl2, bound_chlorine mg/L as Cl2, hocl_obrien mg/L as Cl2, hocl_share 1, cya_to_fc_ratio 1,
     fc_to_cya_share 1, free_chlorine_for_target_hocl mg/L as Cl2, cyanuric_acid_mass kg`,
  ],
  salt: [
    `target_salt mg/L as NaCl, cell_salt_low mg/L as NaCl, cell_salt_high mg/L as NaCl, salt_purity 1, bag_mass kg,
     days_between day`,
    `salt_shortfall mg/L as NaCl, salt_excess mg/L as NaCl, salt_mass kg, salt_bags_whole 1, salt_part_bag kg,
     salt_after_bags mg/L as NaCl, water_loss L/day`,
  ],
  dilution: [
    `fill_salt mg/L as NaCl, fill_cyanuric_acid mg/L, fill_calcium_hardness mg/L as CaCO3, fill_total_alkalinity mg/L as CaCO3,
     fill_tds mg/L, fill_iron mg/L, fill_ph pH, fill_temperature °C, most_salt mg/L as NaCl, most_cyanuric_acid mg/L,
     most_calcium_hardness mg/L as CaCO3, most_total_alkalinity mg/L as CaCO3, most_tds mg/L, largest_single_drain 1,
     drain_flow m³/h, fill_flow m³/h`,
    `drain_fraction 1, drain_volume m³, drain_depth m, drain_time h, fill_time h, drain_rounds 1,
     continuous_exchange_volume m³, salt_after_dilution mg/L as NaCl, cyanuric_acid_after_dilution mg/L,
     calcium_hardness_after_dilution mg/L as CaCO3, total_alkalinity_after_dilution mg/L as CaCO3, tds_after_dilution mg/L,
     ph_after_dilution pH`,
  ],
  ph_alkalinity: [
    `target_ph pH, target_total_alkalinity mg/L as CaCO3, target_borate mg/L as B, acid_product choice, base_product choice,
     borate_product choice, ph_rise_per_week pH`,
    `acid_equivalents mol, acid_volume L, acid_mass kg, bicarbonate_mass kg, soda_ash_mass kg, borate_mass kg, acid_doses 1,
     ph_after pH, ph_after_aeration pH, total_alkalinity_after mg/L as CaCO3, aeration_needed truth, acid_per_week L`,
  ],
  calcium: [
    'target_calcium_hardness mg/L as CaCO3, calcium_product choice',
    'calcium_product_mass kg, calcium_hardness_after mg/L as CaCO3',
  ],
  chlorine: [
    'target_free_chlorine mg/L as Cl2, chlorine_product choice, product_age day',
    `chlorine_product_mass kg, chlorine_product_volume L, cyanuric_acid_added mg/L, calcium_added mg/L as CaCO3,
     salt_added mg/L as NaCl, breakpoint_dose mg/L as Cl2, breakpoint_free_chlorine mg/L as Cl2`,
  ],
  generator: [
    `cell_output g/h, cell_current A, cell_pairs 1, current_efficiency 1, free_chlorine_dusk mg/L as Cl2,
     free_chlorine_dawn mg/L as Cl2, dark_hours h, chlorine_demand mg/L/day, cell_setting 1, minimum_cell_flow m³/h,
     maximum_cell_flow m³/h, cell_cold_limit °C`,
    `cell_output_measured g/h, cell_output_used g/h, generator_hours h/day, chlorine_made mg/L/day, pump_hours_short h/day,
     flow_margin m³/h, cell_may_run truth`,
  ],
  // the contract leaves the rows of the plan open: what is asked at the pool, and the water after one step
  plan: [
    `water_look choice, occasion choice, chlorine_doubt choice, circulation choice, stabilizer_days day, sequestrant_days day, neutralizer_product choice,
     neutralizer_strength 1, neutralizer_strength_basis choice, neutralizer_pack_mass kg, step_product choice, step_strength 1,
     step_strength_basis choice, step_mass kg, step_volume L, step_chlorine_used mg/L as Cl2`,
    `neutralizer_mass kg, contact_time h, step_ph pH, step_total_alkalinity mg/L as CaCO3, step_lsi 1, step_calcium_hardness mg/L as CaCO3,
     step_cyanuric_acid mg/L, step_borate mg/L as B, step_salt mg/L as NaCl, step_free_chlorine mg/L as Cl2,
     drain_free_chlorine mg/L as Cl2, drain_borate mg/L as B, drain_total_chlorine mg/L as Cl2`,
  ],
}

/** Inputs that the contract does not name, or only by their kind. */
export const ADDED: Readonly<Record<string, string>> = {
  pool: 'target_set choice',
  stabilizer: 'target_hocl_model choice, stabilizer_pack_mass kg',
  dilution: 'rain_depth m',
  salt: 'salt_test_error mg/L as NaCl',
  ph_alkalinity: `acid_strength 1, acid_strength_basis choice, base_strength 1, base_strength_basis choice, borate_strength 1,
    borate_strength_basis choice, acid_pack_volume L, acid_pack_mass kg, base_pack_mass kg, bicarbonate_pack_mass kg, borate_pack_mass kg`,
  calcium: 'calcium_strength 1, calcium_strength_basis choice, calcium_pack_mass kg',
  chlorine: 'chlorine_strength 1, chlorine_strength_basis choice, chlorine_pack_volume L, chlorine_pack_mass kg',
  generator: 'cell_kind choice, cell_looked_at day, cell_symptom choice',
}

/** Sets of ranges, as the pool offers them. */
const TARGET_SETS = [
  'salt_cell_private',
  'us_mahc',
  'us_apsp_11',
  'us_new_york',
  'who_2006',
  'de_din_19643',
  'fr_2021',
  'uk_council',
  'au_new_south_wales',
  'au_western_homes',
]

const MODELS = ['wahman_2019', 'obrien_1974']
const BASES = ['mass_percent', 'available_mass_percent', 'trade_percent', 'g_per_L', 'baume']

export const CHOICES = {
  water_body: ['pool', 'spa', 'wading', 'plunge'],
  shell: ['vinyl', 'fibreglass', 'painted', 'plaster', 'tile'],
  setting: ['indoor', 'outdoor'],
  use: ['private', 'public'],
  sanitizer: ['chlorine', 'bromine', 'biguanide'],
  target_set: TARGET_SETS,
  shape: ['rectangle', 'round', 'oval', 'stadium', 'freeform'],
  alkalinity_bottle: ['plain', 'chlorine_counted', 'thiosulfate'],
  hocl_model: MODELS,
  target_hocl_model: MODELS,
  acid_product: ['hydrochloric_acid', 'sulfuric_acid', 'sodium_bisulfate'],
  acid_strength_basis: BASES,
  base_product: ['sodium_carbonate', 'sodium_bicarbonate', 'sodium_hydroxide'],
  base_strength_basis: BASES,
  borate_product: ['borax_decahydrate', 'borax_pentahydrate', 'boric_acid'],
  borate_strength_basis: BASES,
  calcium_product: ['calcium_chloride', 'calcium_chloride_dihydrate'],
  calcium_strength_basis: BASES,
  chlorine_product: ['sodium_hypochlorite', 'calcium_hypochlorite', 'dichlor', 'trichlor'],
  chlorine_strength_basis: BASES,
  cell_kind: ['small_above_ground', 'other'],
  cell_symptom: [
    'low_flow',
    'no_flow',
    'low_salt',
    'high_salt',
    'high_current',
    'cold_water',
    'air',
    'reversed_flow',
    'scale',
    'little_chlorine',
  ],
  water_look: ['clear', 'cloudy', 'green', 'brown', 'stained'],
  occasion: ['ordinary', 'first_fill', 'opening', 'closing', 'rain', 'incident_formed', 'incident_diarrhoea'],
  chlorine_doubt: ['none', 'recent_dose', 'flashed', 'strip_white'],
  circulation: ['running', 'no_flow', 'dirty_filter', 'low_water'],
  neutralizer_product: ['sodium_thiosulfate', 'hydrogen_peroxide', 'ascorbic_acid'],
  neutralizer_strength_basis: BASES,
  step_product: PRODUCT_IDS,
  step_strength_basis: BASES,
}

/** Declared defaults are few: the contract lists all that there are. */
export const DEFAULTS = {
  alkalinity_bottle: 'plain',
  target_lsi: 0,
  hocl_model: 'wahman_2019',
  stabilizer_purity: 1,
  salt_purity: 1,
  largest_single_drain: 1 / 3,
}
export const STAND_INS = { borate_used: 0, cyanuric_acid_used: 0 }
