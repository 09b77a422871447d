import { addScenario, duplicateScenario, moveScenario } from '../../notebook/commands'
import type { Edit } from '../../notebook/edit'
import { isProblem, type Problem } from '../../words/problem'
import { say, sentence } from '../../words/say'
import { takeOut } from '../carry/takeOut'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import type { MenuItem } from '../shell/Menu'
import { openOver } from './opened'

/** What the menu has its heading do. */
export interface HeadActs {
  readonly write: (part: 'name' | 'note') => void
  readonly widen: () => void
}

/** What can be done with a scenario. Everything here can be undone, so nothing asks first. */
export function scenarioMenu(book: Book, id: string, { write, widen }: HeadActs): readonly MenuItem[] {
  const notebook = book.notebook()
  const scenario = notebook.scenarios[id]
  if (!scenario) return []
  const at = book.scenarios().indexOf(id)
  const last = book.scenarios().length - 1
  const disabled = !book.writable()
  const act = (label: string, run: () => void, off = false): MenuItem => ({
    kind: 'act',
    label,
    act: run,
    disabled: disabled || off,
  })
  const send = (edit: Edit | Problem) => {
    const trouble = isProblem(edit) ? edit : book.dispatch(edit)
    if (trouble) announce(sentence(trouble))
  }

  const items: MenuItem[] = [
    act(say('page.scenario.rename'), () => write('name')),
    act(say('page.scenario.write_note'), () => write('note')),
    act(say('page.scenario.duplicate'), () =>
      send(duplicateScenario(notebook, id, say('page.scenario.copy_of', { name: scenario.name }))),
    ),
    act(say('page.scenario.add_after'), () => send(addScenario(notebook, say('page.scenario.new_name'), id))),
    act(say('page.scenario.move_left'), () => send(moveScenario(notebook, id, -1)), at <= 1),
    act(say('page.scenario.move_right'), () => send(moveScenario(notebook, id, 1)), at === 0 || at === last),
    { kind: 'act', label: say('page.scenario.width'), act: widen },
    act(say('page.scenario.carry'), () => openOver({ what: 'carry', scenario: id })),
    act(say('page.scenario.remove'), () => void takeOut(book, id), at === 0),
  ]
  const samples = Object.values(notebook.samples)
  if (samples.length === 0 || disabled) return items
  const tie = (sample: string | null) => send({ type: 'change_scenario', scenario: id, set: { sample } })
  items.push({ kind: 'heading', label: say('page.scenario.sample') })
  items.push({
    kind: 'choice',
    label: say('page.scenario.no_sample'),
    checked: scenario.sample === null,
    act: () => tie(null),
  })
  for (const sample of samples) {
    const label = sample.date === '' ? sample.name : `${sample.name}, ${sample.date}`
    items.push({ kind: 'choice', label, checked: scenario.sample === sample.id, act: () => tie(sample.id) })
  }
  return items
}
