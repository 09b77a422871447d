import { Match, Switch } from 'solid-js'
import { addScenario } from '../notebook/commands'
import { say, sentence } from '../words/say'
import { opened, openOver } from './grid/opened'
import { announce } from './shell/announce'
import { useBook } from './shell/book'
import { placeLink } from './shell/place'

/** Over the worksheets: whether the work is kept, and what can be done with it. */
export function Toolbar() {
  const book = useBook()
  const toPaper = () => {
    const part = book.selection.cell()?.row.worksheet
    return placeLink({ page: 'out', ...(part === undefined ? {} : { part }) })
  }
  function add(): void {
    const trouble = book.dispatch(addScenario(book.notebook(), say('page.scenario.new_name')))
    if (trouble) announce(sentence(trouble))
  }
  return (
    <div class="toolbar still" role="toolbar" aria-label={say('page.toolbar')}>
      <SavedState />
      <button type="button" class="act" disabled={!book.canUndo()} onClick={() => book.undo()}>
        {say('page.undo')}
      </button>
      <button type="button" class="act" disabled={!book.canRedo()} onClick={() => book.redo()}>
        {say('page.redo')}
      </button>
      <button
        type="button"
        class="act"
        aria-haspopup="menu"
        aria-expanded={opened()?.what === 'cells'}
        onClick={(event) => openOver({ what: 'cells', anchor: event.currentTarget })}
      >
        {say('page.grid.cells')}
      </button>
      <button type="button" class="act" onClick={() => openOver({ what: 'find' })}>
        {say('page.grid.find')}
      </button>
      <button type="button" class="act" disabled={!book.writable()} onClick={add}>
        {say('page.add_scenario')}
      </button>
      <a class="act" href={placeLink({ page: 'study' })}>
        {say('page.title.study')}
      </a>
      <a class="act" href={toPaper()}>
        {say('page.title.out')}
      </a>
    </div>
  )
}

function SavedState() {
  const book = useBook()
  const failed = () => {
    const now = book.saving()
    return now.state === 'failed' ? now.why : null
  }
  return (
    <span class="state" role="status" classList={{ warm: failed() !== null }}>
      <Switch fallback={say('page.saving.saved')}>
        <Match when={!book.writable()}>{say('page.saving.read_only')}</Match>
        <Match when={failed()}>
          {(why) => (
            <>
              {say('page.saving.failed', { why: sentence(why()) })}{' '}
              <button type="button" class="link" onClick={() => book.saveAgain()}>
                {say('page.saving.again')}
              </button>
            </>
          )}
        </Match>
        <Match when={book.saving().state === 'saving'}>{say('page.saving.saving')}</Match>
        <Match when={book.saving().state === 'not_kept'}>{say('page.saving.not_kept')}</Match>
      </Switch>
    </span>
  )
}
