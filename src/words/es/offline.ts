export const offline = {
  'page.version.waits': 'Hay una versión más nueva de esta página. Lo que usted escribió se queda.',
  'page.version.take': 'Usar la versión nueva',
  'page.version.not_kept':
    'Algo de esta página no está guardado todavía. Guarde el cuaderno en un archivo o termine la entrada y pruebe otra vez.',
  'page.version.other_tab':
    'Otra pestaña tiene una entrada sin terminar o sin guardar. Mírela o ciérrela y pruebe otra vez.',
} as const
