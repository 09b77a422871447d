/** `caution.<key>`: what stands beside a row that can hurt people, pool or cell. The label and the local code come first. */
export const cautions = {
  'caution.label_first': 'The product’s label and the local code come first.',
  'caution.one_at_a_time': 'One product at a time, pump on, nobody in the water; wait before the next.',
  'caution.protective_gear':
    'Goggles and gloves. Eyes or skin: rinse with running water for 15 minutes, fresh air, the emergency number.',
  'caution.ventilate': 'Open doors and run fans indoors; stand up wind outdoors.',
  'caution.acid_into_water': 'Acid into water, never water into acid.',
  'caution.acid_where':
    'Cell off, pump on, at the deep end, not into the skimmer; no chlorine from any source within the hour.',
  'caution.acid_rest_between': 'Wait a turnover and test again before the next part.',
  'caution.chlorine_with_acid':
    'Never let acid and chlorine meet: another place, scoop and hour. Together they make chlorine gas.',
  'caution.chlorine_kinds_apart':
    'Calcium hypochlorite, dichlor and trichlor never share a scoop, a feeder or a skimmer: fire and explosion.',
  'caution.breakpoint_test_first':
    'Test again first: some oxidizers read as combined chlorine. Ventilate and renew water before chlorine; one closed treatment, never ten times the reading.',
  'caution.stabilizer_slow':
    'In a sock at a return, no backwash for 5 to 7 days, no second dose and no test before a week. It cannot be taken back out.',
  'caution.salt_cell_off': 'Cell off while salt goes in and until it is dissolved and mixed.',
  'caution.salt_spread':
    'Round the edge with the pump on, not through the skimmer; brush until none lies on the floor.',
  'caution.salt_circulate': 'Circulate for 24 hours, test by a second way, then the cell on.',
  'caution.calcium_hot': 'It heats when it dissolves: cold water in the bucket first, then the flakes in portions.',
  'caution.calcium_apart': 'Not within a day of bicarbonate or soda ash: the water clouds.',
  'caution.carbonate_apart': 'Not within a day of calcium: the water clouds.',
  'caution.soda_ash_clouds': 'Dissolve it first and add it in parts; it clouds where pH or index goes high.',
  'caution.caustic_burns': 'It burns skin and eyes and heats strongly in water: into water, in small parts.',
  'caution.borate_law': 'Some countries limit borates in pools; keep pets from drinking the water.',
  'caution.shell_lift':
    'Ground water can lift or crack an empty shell: look at its level and the relief valve, drain a part only, ask a professional where in doubt.',
  'caution.liner_shrinks': 'Never under 30 cm at the shallow end of a vinyl pool: the liner shrinks or floats.',
  'caution.runs_dry': 'Cell, heater and pump off before the level passes the skimmer.',
  'caution.discharge_rules': 'Salt water may be barred from storm drain, lawn and septic tank: the local rule first.',
  'caution.dechlorinate_first': 'No chlorine left in it, and the pH checked, before it goes out.',
  'caution.electrical':
    'Electrical work is for a licensed electrician; the outlet has a residual-current device. Off at the breaker before anything is opened.',
  'caution.no_flow_no_current': 'No flow, no current: hydrogen collects in a cell that stands still.',
  'caution.cell_off_first':
    'Pump and cell off at the breaker, unplug, close the valves, open the air relief until the pressure is gone, then take it out.',
  'caution.cell_rinse_first': 'Rinse it with water first: what is left of chlorine makes gas with acid.',
  'caution.cell_vinegar':
    'Only where scale is seen: the plates alone, outdoors, in 5 % kitchen vinegar for two to three hours, connector dry, no metal tool. Stronger vinegar is another product.',
} as const
