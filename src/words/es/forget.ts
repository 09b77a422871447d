export const forgetWords = {
  'forget.find': 'Buscar por nombre, lugar o nota',
  'forget.found': '{count} de {all}',
  'forget.none_found': 'Ningún cuaderno tiene eso en su nombre, lugar, notas o muestras.',
  'forget.place_and_when': '{place} · {when}',
  'forget.place': 'Dónde está la piscina, o de quién es',
  'forget.says':
    'Se borra de este navegador para siempre: el cuaderno con sus muestras, planes y notas, sus estados anteriores, su lugar en la búsqueda y lo que otras pestañas abiertas tienen de él. No se puede recuperar.',
  'forget.looking': 'Buscando qué más contiene sus datos…',
  'forget.import':
    'El archivo de laboratorio {file} tiene {count|una fila|# filas} de esta piscina, sin contar las filas rechazadas.',
  'forget.import.blank': 'Vaciar esas filas y borrar el archivo tal como se envió',
  'forget.import.remove': 'Borrar el archivo de laboratorio entero',
  'forget.import.leave': 'Dejarlo como está',
  'forget.files': 'Estos archivos se guardaron de él. Están fuera del alcance de este navegador; bórrelos donde estén:',
  'forget.backups':
    'Estos archivos contienen todo lo que había aquí cuando se guardaron, y pueden contener también este cuaderno:',
  'forget.file': '{file}, guardado {when}, SHA-256 {sha256}…',
  'forget.file_unhashed': '{file}, guardado {when}',
  'forget.save_list': 'Guardar esta lista',
  'forget.list_name': 'archivos por borrar',
  'forget.done': '«{name}» está borrado.',
} as const
