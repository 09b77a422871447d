/** Words of the functions of the pool itself, its salt, and the printed index. */
export const functionsPool = {
  'function.POOL_AREA.says': 'Area of the water’s surface, from the shape and what a tape measures at the water line.',
  'function.POOL_AREA.shape': 'Shape. Oval is an ellipse; stadium has straight sides and a half circle at each end.',
  'function.POOL_AREA.length': 'Overall length, for a rectangle, an oval or a stadium.',
  'function.POOL_AREA.width': 'Overall width, for a rectangle, an oval or a stadium.',
  'function.POOL_AREA.diameter': 'Diameter of a round pool.',
  'function.POOL_AREA.surface_area': 'Surface of a freeform pool.',

  'function.POOL_MEAN_DEPTH.says':
    'Mean depth of the water: a flat or evenly sloping floor, and a hopper let into it where there is one. Water depth, not the height of the wall.',
  'function.POOL_MEAN_DEPTH.depth_shallow': 'Depth of water at the shallow end.',
  'function.POOL_MEAN_DEPTH.depth_deep':
    'Depth of water at the deep end of the main floor. Not taken: the floor is flat.',
  'function.POOL_MEAN_DEPTH.surface_area': 'Surface of the pool, needed only with a hopper.',
  'function.POOL_MEAN_DEPTH.hopper_length': 'Length of the hopper, halfway up its sides.',
  'function.POOL_MEAN_DEPTH.hopper_width': 'Width of the hopper, halfway up its sides.',
  'function.POOL_MEAN_DEPTH.hopper_depth': 'Depth of water over the hopper’s flat bottom, from the surface.',

  'function.POOL_VOLUME.says': 'Volume of the water: surface by shape, times mean depth.',
  'function.POOL_VOLUME.shape': 'Shape. Oval is an ellipse; stadium has straight sides and a half circle at each end.',
  'function.POOL_VOLUME.water_depth_mean': 'Mean depth of the water.',
  'function.POOL_VOLUME.length': 'Overall length, for a rectangle, an oval or a stadium.',
  'function.POOL_VOLUME.width': 'Overall width, for a rectangle, an oval or a stadium.',
  'function.POOL_VOLUME.diameter': 'Diameter of a round pool.',
  'function.POOL_VOLUME.surface_area': 'Surface of a freeform pool.',

  'function.VOLUME_FROM_SALT_RISE.says':
    'Volume of a pool in which a known mass of salt raised the reading, once it is dissolved and mixed.',
  'function.VOLUME_FROM_SALT_RISE.salt_mass_added': 'Salt that was added.',
  'function.VOLUME_FROM_SALT_RISE.salt_before': 'Salt reading before it was added.',
  'function.VOLUME_FROM_SALT_RISE.salt': 'Salt reading after it was mixed in.',

  'function.VOLUME_LOW.says':
    'Lower end of what the volume may be: 2 % under a metered one, 10 % under one by shape, or what the salt rise gives with its error.',
  'function.VOLUME_LOW.measured_volume': 'Volume by a water meter.',
  'function.VOLUME_LOW.shape_volume': 'Volume by shape and depth.',
  'function.VOLUME_LOW.salt_mass_added': 'Salt that was added.',
  'function.VOLUME_LOW.salt_before': 'Salt reading before it was added.',
  'function.VOLUME_LOW.salt': 'Salt reading after it was mixed in.',
  'function.VOLUME_LOW.salt_rise_error':
    'By how much the rise may be off. Not given: 300 mg/L, common practice for two readings.',

  'function.VOLUME_HIGH.says':
    'Upper end of what the volume may be: 2 % over a metered one, 10 % over one by shape, or what the salt rise gives with its error.',
  'function.VOLUME_HIGH.measured_volume': 'Volume by a water meter.',
  'function.VOLUME_HIGH.shape_volume': 'Volume by shape and depth.',
  'function.VOLUME_HIGH.salt_mass_added': 'Salt that was added.',
  'function.VOLUME_HIGH.salt_before': 'Salt reading before it was added.',
  'function.VOLUME_HIGH.salt': 'Salt reading after it was mixed in.',
  'function.VOLUME_HIGH.salt_rise_error':
    'By how much the rise may be off. Not given: 300 mg/L, common practice for two readings.',

  'function.TURNOVER_TIME.says': 'Hours in which the pump moves the pool’s volume once.',
  'function.TURNOVER_TIME.volume': 'Volume of the water.',
  'function.TURNOVER_TIME.pump_flow': 'Flow as measured, not the pump’s nameplate.',

  'function.TURNOVERS_PER_DAY.says': 'How many times a day the pump moves the pool’s volume.',
  'function.TURNOVERS_PER_DAY.volume': 'Volume of the water.',
  'function.TURNOVERS_PER_DAY.pump_flow': 'Flow as measured, not the pump’s nameplate.',
  'function.TURNOVERS_PER_DAY.pump_hours': 'Hours a day that the pump runs.',

  'function.SHARE_FILTERED.says': 'Share of a well mixed pool’s water that has been through the filter at least once.',
  'function.SHARE_FILTERED.turnovers': 'Volumes that the pump has moved.',

  'function.SALT_MASS.says': 'Salt to add for a wanted concentration; 0 where there is enough.',
  'function.SALT_MASS.volume': 'Volume of the water.',
  'function.SALT_MASS.salt': 'Salt in the water now.',
  'function.SALT_MASS.target_salt': 'Salt that is wanted.',
  'function.SALT_MASS.salt_purity': 'Share of the product that is salt. Not given: all of it.',

  'function.SALT_AFTER_MASS.says': 'Salt in the water after a mass of salt is mixed in.',
  'function.SALT_AFTER_MASS.volume': 'Volume of the water.',
  'function.SALT_AFTER_MASS.salt': 'Salt in the water before.',
  'function.SALT_AFTER_MASS.salt_mass': 'Salt that is added.',
  'function.SALT_AFTER_MASS.salt_purity': 'Share of the product that is salt. Not given: all of it.',

  'function.SALT_FROM_CHLORIDE.says': 'Salt that holds this much chloride, all of it taken as sodium chloride.',
  'function.SALT_FROM_CHLORIDE.chloride': 'Chloride in the water.',

  'function.SALT_FROM_CONDUCTIVITY.says':
    'Salt that gives this conductivity, all ions taken as sodium and chloride. Other ions make it read high.',
  'function.SALT_FROM_CONDUCTIVITY.conductivity': 'Conductivity at 25 °C.',

  'function.CONDUCTIVITY_OF_SALT.says': 'Conductivity at 25 °C of water that holds nothing but this salt.',
  'function.CONDUCTIVITY_OF_SALT.salt': 'Salt in the water.',

  'function.CONDUCTIVITY_AT_25.says':
    'What a conductivity that was measured without compensation would be at 25 °C, for salt water.',
  'function.CONDUCTIVITY_AT_25.conductivity': 'Conductivity as measured, without temperature compensation.',
  'function.CONDUCTIVITY_AT_25.temperature': 'Temperature of the water in the measuring cell.',

  'function.POTASSIUM_CHLORIDE_MASS.says': 'Potassium chloride that brings as much chloride as this mass of salt.',
  'function.POTASSIUM_CHLORIDE_MASS.salt_mass': 'Mass of sodium chloride.',

  'function.WATER_LOSS_FROM_SALT.says':
    'Water that left the pool with its salt, by leak, splash or backwash, told by the fall of the salt reading. Evaporation takes no salt. The fill water is taken as free of salt.',
  'function.WATER_LOSS_FROM_SALT.volume': 'Volume of the water.',
  'function.WATER_LOSS_FROM_SALT.salt_before': 'Earlier salt reading.',
  'function.WATER_LOSS_FROM_SALT.salt': 'Salt reading now.',
  'function.WATER_LOSS_FROM_SALT.days_between': 'Days from one reading to the other.',

  'function.TABLE_INDEX.says':
    'Saturation index by the operator’s printed factors, straight lines between their rows. It knows nothing of salt beyond the step at 1000 mg/L.',
  'function.TABLE_INDEX.ph': 'pH; only 7.0 to 8.0 where there is cyanuric acid, as its factors are printed.',
  'function.TABLE_INDEX.temperature': 'Temperature of the pool’s water.',
  'function.TABLE_INDEX.calcium_hardness': 'Calcium hardness.',
  'function.TABLE_INDEX.total_alkalinity':
    'Total alkalinity as titrated; what cyanurate and borate make of it is taken off.',
  'function.TABLE_INDEX.cyanuric_acid': 'Cyanuric acid.',
  'function.TABLE_INDEX.borate': 'Borate, as boron.',
  'function.TABLE_INDEX.tds': 'Dissolved solids: under 1000 mg/L the constant is 12.1, else 12.2.',
} as const
