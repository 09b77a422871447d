import { hasWords, say } from '../../words/say'
import type { Definition } from '../../worksheet/definition'

export function worksheetLabel(definition: Definition): string {
  const key = `worksheet.${definition.id}.label`
  return definition.label ?? (hasWords(key) ? say(key) : definition.id.replaceAll('_', ' '))
}
