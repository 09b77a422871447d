/** What is said of a backup of everything, of making one and of taking one in. */
export const backup = {
  'problem.stopped': 'It was stopped; nothing was changed.',
  'problem.backup_no_hash':
    'A backup is held to its hash, which this browser only works out on a page that was fetched over a secure connection (https, or this device itself).',
  'problem.backup_none': '{path} is no backup of Basinbook; nothing was read.',
  'problem.backup_changed': '{path}: record {record} is not as it was written: its hash is another.',
  'problem.backup_cut_off': '{path} cannot be read from record {record} on: it is cut off or damaged.',
  'problem.backup_line_too_long': '{path}: record {record} is longer than any record of a backup.',
  'problem.backup_after_end': '{path}: record {record} stands after the end.',
  'problem.backup_not_whole':
    '{path}: the end, record {record}, counts {records} records before it and the hash of all; {found} are there, or one was exchanged.',
  'problem.backup_record_refused': '{path}: record {record} cannot be taken in. {why}',
  'problem.lab_head_wrong': 'What is said of a lab file is not as it is written.',
  'problem.lab_columns_wrong': 'The columns of a lab file do not fit together.',

  'backup.title': 'Backup of everything',
  'backup.intro':
    'One file with all notebooks, the lab files with their columns, and the mappings. Each record in it is held to its SHA-256, so that a damaged file is known as one.',
  'backup.with_states': 'with the earlier states of each notebook',
  'backup.make': 'Save a backup',
  'backup.making': 'Gathering everything…',
  'backup.made':
    'Saved as {file}: {notebooks|one notebook|# notebooks}, {states|one earlier state|# earlier states}, {imports|one lab file|# lab files}, {mappings|one mapping|# mappings}.',
  'backup.made_damaged':
    '{count|One notebook cannot be read: what is stored of it is in the file as it is.|# notebooks cannot be read: what is stored of them is in the file as it is.}',
  'backup.stop': 'Stop',
  'backup.progress': 'How far it is',

  'backup.restore': 'Take in a backup',
  'backup.restore_intro':
    'What a backup holds comes beside what is here and never over it. What is here just the same is left alone; what is here otherwise comes in under another name.',
  'backup.choose': 'Choose a backup',
  'backup.checking': 'Holding every record to its hash…',
  'backup.holds':
    'Made on {when}: {notebooks|one notebook|# notebooks}, {states|one earlier state|# earlier states}, {imports|one lab file|# lab files}, {mappings|one mapping|# mappings}.',
  'backup.holds_damaged': 'Could not be read already when it was made, and cannot be taken in: {names}.',
  'backup.whole': 'Every record is as it was written.',
  'backup.faults': 'Not everything in it is as it was written. The rest can still be taken in.',
  'backup.take': 'Take it in',
  'backup.take_rest': 'Take in what is whole',
  'backup.taking': 'Taking it in…',
  'backup.taken':
    'Taken in: {notebooks|one notebook|# notebooks}, {states|one earlier state|# earlier states}, {imports|one lab file|# lab files}, {mappings|one mapping|# mappings}. {same} were here just the same; {renamed} came under another name.',
  'backup.renamed': '{name}, from the backup of {when}',
} as const
