import { LOCKED } from '../functions/registry'
import { SHIPPED } from '../worksheet/shipped'
import rules from './rules.json'

/**
 * What a plan rests on, each with its version: locked functions by name, worksheets as `worksheet:<id>`, the rules. The build puts
 * the finished data in this module's place.
 */
const versions: Readonly<Record<string, number>> = {
  ...Object.fromEntries([...LOCKED.values()].map(({ name, version }) => [name, version])),
  ...Object.fromEntries(SHIPPED.map(({ definition }) => [`worksheet:${definition.id}`, definition.edition])),
  rules: rules.version,
}

export default versions
