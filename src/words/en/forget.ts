/** Finding notebooks among many, and deleting one with all that is kept of it. */
export const forgetWords = {
  'forget.find': 'Find by name, place or note',
  'forget.found': '{count} of {all}',
  'forget.none_found': 'No notebook has that in its name, place, notes or samples.',
  'forget.place_and_when': '{place} · {when}',
  'forget.place': 'Where the pool stands, or whose it is',
  'forget.says':
    'It is removed from this browser for good: the notebook with its samples, plans and notes, its earlier states, its place in the search, and what other open tabs hold of it. It cannot be brought back.',
  'forget.looking': 'Looking for what else holds its data…',
  'forget.import': 'The lab file {file} has {count|one row|# rows} of this pool, not counting rows that were refused.',
  'forget.import.blank': 'Blank those rows, and delete the file as it was sent',
  'forget.import.remove': 'Delete the whole lab file',
  'forget.import.leave': 'Leave it as it is',
  'forget.files': 'These files were saved from it. They are out of this browser’s reach; delete them where they are:',
  'forget.backups':
    'These files hold everything that was kept here when they were saved, and may hold this notebook too:',
  'forget.file': '{file}, saved {when}, SHA-256 {sha256}…',
  'forget.file_unhashed': '{file}, saved {when}',
  'forget.save_list': 'Save this list',
  'forget.list_name': 'files to delete',
  'forget.done': '“{name}” is deleted.',
} as const
