export const backup = {
  'problem.stopped': 'Se detuvo; no cambió nada.',
  'problem.backup_no_hash':
    'Una copia se comprueba con su hash, que este navegador solo calcula en una página traída por una conexión segura (https, o este mismo dispositivo).',
  'problem.backup_none': '{path} no es una copia de Basinbook; no se leyó nada.',
  'problem.backup_changed': '{path}: el registro {record} no está como se escribió: su hash es otro.',
  'problem.backup_cut_off': '{path} no se puede leer desde el registro {record}: está cortado o dañado.',
  'problem.backup_line_too_long': '{path}: el registro {record} es más largo que cualquier registro de una copia.',
  'problem.backup_after_end': '{path}: el registro {record} está después del final.',
  'problem.backup_not_whole':
    '{path}: el final, el registro {record}, cuenta {records} registros antes de él y el hash de todos; hay {found}, o uno se cambió por otro.',
  'problem.backup_record_refused': '{path}: el registro {record} no se puede incorporar. {why}',
  'problem.lab_head_wrong': 'Lo que se dice de un archivo de laboratorio no está como se escribe.',
  'problem.lab_columns_wrong': 'Las columnas de un archivo de laboratorio no encajan entre sí.',

  'backup.title': 'Copia de todo',
  'backup.intro':
    'Un archivo con todos los cuadernos, los archivos de laboratorio con sus columnas y las correspondencias. Cada registro se comprueba con su SHA-256, de modo que un archivo dañado se reconoce.',
  'backup.with_states': 'con los estados anteriores de cada cuaderno',
  'backup.make': 'Guardar una copia',
  'backup.making': 'Reuniéndolo todo…',
  'backup.made':
    'Guardado como {file}: {notebooks|un cuaderno|# cuadernos}, {states|un estado anterior|# estados anteriores}, {imports|un archivo de laboratorio|# archivos de laboratorio}, {mappings|una correspondencia|# correspondencias}.',
  'backup.made_damaged':
    '{count|Un cuaderno no se puede leer: lo almacenado de él está en el archivo tal cual.|# cuadernos no se pueden leer: lo almacenado de ellos está en el archivo tal cual.}',
  'backup.stop': 'Detener',
  'backup.progress': 'Hasta dónde ha llegado',

  'backup.restore': 'Incorporar una copia',
  'backup.restore_intro':
    'Lo que contiene una copia se pone junto a lo que hay aquí y nunca encima. Lo que aquí es igual se deja; lo que aquí es distinto entra con otro nombre.',
  'backup.choose': 'Elegir una copia',
  'backup.checking': 'Comprobando cada registro con su hash…',
  'backup.holds':
    'Hecha el {when}: {notebooks|un cuaderno|# cuadernos}, {states|un estado anterior|# estados anteriores}, {imports|un archivo de laboratorio|# archivos de laboratorio}, {mappings|una correspondencia|# correspondencias}.',
  'backup.holds_damaged': 'Ya no se podían leer cuando se hizo, y no se pueden incorporar: {names}.',
  'backup.whole': 'Cada registro está como se escribió.',
  'backup.faults': 'No todo en ella está como se escribió. El resto se puede incorporar igualmente.',
  'backup.take': 'Incorporarla',
  'backup.take_rest': 'Incorporar lo que está entero',
  'backup.taking': 'Incorporándola…',
  'backup.taken':
    'Incorporado: {notebooks|un cuaderno|# cuadernos}, {states|un estado anterior|# estados anteriores}, {imports|un archivo de laboratorio|# archivos de laboratorio}, {mappings|una correspondencia|# correspondencias}. {same} ya estaban aquí igual; {renamed} entraron con otro nombre.',
  'backup.renamed': '{name}, de la copia del {when}',
} as const
