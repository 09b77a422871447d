import type { Notice } from '../engine/outcome'
import { hasWords, say } from '../words/say'
import { labelOf } from './labelOf'

/** A notice such as `fitted:temperature` in words; one with a sentence of its own has `notice.<code>.<name>`. */
export function noticeText(notice: Notice): string {
  const [code = '', name = ''] = notice.split(':')
  const own = `notice.${code}.${name}`
  if (hasWords(own)) return say(own)
  const general = `notice.${code}`
  return hasWords(general) ? say(general, { name: labelOf(name) }) : notice
}
