/** What the test desk says: the pool, the bottle, the readings one after another. */
export const desk = {
  'page.desk.intro':
    'One bottle after another. Enter moves on; a dash says that a reading was not taken; a unit may be typed behind the figure.',
  'page.desk.keys':
    'Enter: next · F8: worksheets and back · F9: the customer’s sheet · F8 after printing it: the next customer',
  'page.desk.read_only': 'This notebook is open in another tab; here it can only be read.',
  'page.desk.resumed': 'Here is where it was left; “{text}” was being typed. Enter takes it, Escape drops it.',

  'page.desk.pool': 'Pool',
  'page.desk.find': 'Name of the pool, or where it is',
  'page.desk.find_help': 'Type; arrows and Enter choose. A name that is not there makes a new pool.',
  'page.desk.open_now': 'open now',
  'page.desk.last_changed': 'last changed {date}',
  'page.desk.new_pool': 'New pool “{name}”',
  'page.desk.name': 'Name',
  'page.desk.place': 'Where it is, or whose',
  'page.desk.volume_or_shape': 'Without a volume, Enter leads to the shape.',
  'page.desk.volume_by_shape': 'By shape: {volume}',
  'page.desk.volume': 'Volume, where it is known',
  'page.desk.bag': 'Bag of salt',

  'page.desk.products': 'Products on hand',
  'page.desk.products_help':
    'Digits tick what the customer has, or what is sold here, by its label; Enter moves on. Others are added on the page of the step plan.',
  'page.desk.pack': 'Size of a pack',
  'page.desk.same_products': 'As for the last pool',

  'page.desk.targets': 'Targets',
  'page.desk.targets_help':
    'The middle of the range for this pool, its one end where it has only one. Each can be changed.',
  'page.desk.take_targets': 'Aim for these',
  'page.desk.targets_from': 'Ranges: {source}',

  'page.desk.bottle': 'The bottle',
  'page.desk.bottle_of': 'Bottle of {date}',
  'page.desk.bottle_before': 'Readings from before',
  'page.desk.bottle_now': '“{name}” is open; its readings go on below.',
  'page.desk.no_bottle': 'No bottle yet. The first reading begins one.',
  'page.desk.new_bottle': 'New bottle',

  'page.desk.pool_temperature': 'Temperature of the pool',

  'page.desk.readings': 'Readings',
  'page.desk.more': 'More readings',
  'page.desk.seen': 'Seen at the pool',
  'page.desk.unit_of': 'Unit of {quantity}',
  'page.desk.method_of': 'Test used for {quantity}',
  'page.desk.method_unsaid': 'test not said',
  'page.desk.within': 'tells it within {half}',
  'page.desk.another': 'Another test',
  'page.desk.another_of': 'Another test of {quantity}',
  'page.desk.believed': 'believed',
  'page.desk.take_out': 'Take out',
  'page.desk.take_out_this': 'Take out {reading}',
  'page.desk.readings_of': 'Readings of {quantity}',
  'page.desk.unlikely': '{name} {value} is not usual for a pool. Read the test again, or keep it: Enter keeps it.',
  'page.desk.unlikely_pool':
    '{name} {value} is not usual. Look at the figure and its unit, or keep it: Enter keeps it.',
  'page.desk.limit_above': 'Kept as more than {value}, never as {value}. Dilute the sample and test again.',
  'page.desk.limit_below': 'Kept as less than {value}, never as {value}.',

  'page.desk.advice.number': 'Rather believe {reading}: it is a number, the other only a limit.',
  'page.desk.advice.bleaches':
    'Rather believe {reading}: over 10 mg/L the dyes of other chlorine tests bleach and read too little; a titration does not.',
  'page.desk.advice.finer': 'Rather believe {reading}: of these tests it tells the finest difference.',
  'page.desk.advice.first': 'Both tests tell it as finely; the first is believed until you say otherwise.',
  'page.desk.advice.apart': 'They lie further apart than both tests err. Test it once more.',
  'page.desk.advice.agree': 'They agree as well as these tests can tell.',

  'page.desk.check.total_below_free':
    'Total chlorine {total_chlorine} is less than free chlorine {free_chlorine}: one of the two tests errs. Test both again.',
  'page.desk.check.dyes_err':
    'With free chlorine at {free_chlorine} the dyes for pH and alkalinity err; the plan uses neither until it has fallen.',
  'page.desk.check.calcium_over_total':
    'Calcium hardness {calcium_hardness} is more than total hardness {total_hardness}, of which it is a part: test one of them again.',
  'page.desk.check.hardness_alone':
    'Total hardness counts magnesium too and never stands in for calcium. Test the calcium hardness itself.',
  'page.desk.assume_calcium': 'Assume calcium as 0.7 of total hardness, a state code’s rule',
  'page.desk.check.old':
    'After more than two hours chlorine has left the bottle: the plan has it tested again at the pool.',
  'page.desk.check.bottle_alone': 'The balance goes by the pool’s own temperature, not by the bottle’s: ask for it.',
  'page.desk.check.hardly_salt':
    'Salt {salt} is next to nothing for a pool with a cell. Look at the unit, or keep it: Enter keeps it.',
  'page.desk.check.window_turned':
    'The cell’s least salt {cell_salt_low} is not under its most {cell_salt_high}. Look at its label again.',
  'page.desk.check.warmed':
    'The bottle is not at the pool’s temperature any more. The pool’s {temperature} counts; the bottle’s is only noted.',

  'page.desk.done': 'To the customer’s sheet',
  'page.desk.to_grid': 'Worksheets',
  'page.desk.to_plan': 'Step plan',

  'product.stock.acid_31': 'Hydrochloric (muriatic) acid, 31.45 % by mass',
  'product.stock.acid_14': 'Hydrochloric (muriatic) acid, 14.5 % by mass',
  'product.stock.dry_acid': 'Sodium bisulfate (dry acid), 93.2 % by mass',
  'product.stock.liquid_12': 'Sodium hypochlorite solution, 12.5 trade %',
  'product.stock.liquid_10': 'Sodium hypochlorite solution, 10 trade %',
  'product.stock.granular_65': 'Calcium hypochlorite, 65 % available chlorine',
  'product.stock.calcium_77': 'Calcium chloride, 77 % by mass',
  'product.stock.calcium_94': 'Calcium chloride, 94 % by mass',
  'product.stock.stabilizer': 'Stabilizer (cyanuric acid), 98 % by mass',
} as const
