import type { Edit } from '../../notebook/edit'
import { cellKey } from '../../notebook/notebook'

/**
 * The cells whose source an edit can change, by key; `'all'` where many do. An entry in the baseline can be followed by
 * every other scenario.
 */
export function touched(edit: Edit, scenarios: readonly string[]): readonly string[] | 'all' {
  switch (edit.type) {
    case 'set_cell':
      return edit.scenario === scenarios[0]
        ? scenarios.map((scenario) => cellKey(scenario, edit.quantity))
        : [cellKey(edit.scenario, edit.quantity)]
    case 'change_scenario':
      return 'sample' in edit.set ? 'all' : []
    case 'change_notebook':
    case 'set_unit':
    case 'computed_with':
    case 'put_product':
    case 'remove_product':
    case 'put_chart':
    case 'remove_chart':
    case 'set_precision':
    case 'put_plan_record':
    case 'remove_plan_record':
    case 'put_addition':
    case 'remove_addition':
    case 'put_remark':
    case 'remove_remark':
    case 'put_lesson':
    case 'remove_lesson':
      return []
    case 'together': {
      const parts = edit.edits.map((part) => touched(part, scenarios))
      return parts.includes('all') ? 'all' : parts.flat()
    }
    default:
      return 'all'
  }
}
