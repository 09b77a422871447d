import './out.css'
import { createMemo, createSignal, For, Show } from 'solid-js'
import { out } from '../../words/en/out'
import { addWords, say } from '../../words/say'
import { worksheetLabel } from '../grid/worksheetLabel'
import { downloadBlob } from '../notebooks/downloadText'
import { noteExport } from '../notebooks/exported'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { prepareFormulas } from '../shell/formulas'
import { goTo, usePlace } from '../shell/place'
import { bookOf } from './bookOf'
import { fileName } from './fileName'
import { PaperSheet } from './PaperSheet'
import { ScenarioChoice } from './ScenarioChoice'
import { sheetOf } from './sheetOf'
import { worksheetCsv } from './worksheetCsv'

addWords(out)

/** Printed smaller than this many points, figures are hard to read; sheets are set in so many. */
const SMALL = 5
const SET_IN = 9

/** Worksheets out of the notebook: as files for other programs, and on paper. */
export function OutPage() {
  const book = useBook()
  const place = usePlace()
  const [left, setLeft] = createSignal<ReadonlySet<string>>(new Set())
  const [scales, setScales] = createSignal<Readonly<Record<string, number>>>({})
  const definitions = createMemo(() => {
    const all = book.catalog().worksheets
    const one = all.find(({ id }) => id === place().part)
    return one ? [one] : all
  })
  const scenarios = createMemo(() => book.scenarios().filter((id) => !left().has(id)))
  const sheets = createMemo(() => definitions().map((definition) => sheetOf(book, definition, scenarios())))
  const small = () => sheets().filter(({ title }) => (scales()[title] ?? 1) * SET_IN < SMALL).length

  function save(content: BlobPart, type: string, ending: string): void {
    const [only] = definitions()
    const part = definitions().length === 1 && only ? worksheetLabel(only) : ''
    const name = fileName(book.notebook().name, part, ending)
    const file = new Blob([content], { type })
    downloadBlob(name, file)
    void noteExport(book.notebook().id, name, file)
    announce(say('out.saved', { name }))
  }

  async function saveSpreadsheet(): Promise<void> {
    // Formulas that were entered name scenarios by id until what reads them has come.
    await prepareFormulas()
    const { ods, ODS_TYPE } = await import('../../out/ods')
    save(ods(bookOf(book, definitions(), scenarios(), document.documentElement.lang)), ODS_TYPE, 'ods')
  }

  return (
    <article class="text-page out">
      <div class="still-on-paper">
        <h1>{say('page.title.out')}</h1>
        <p class="intro">{say('out.intro')}</p>
        <form onSubmit={(event) => event.preventDefault()}>
          <label>
            {say('out.worksheet')}
            <select
              class="field"
              onChange={({ currentTarget: { value } }) =>
                goTo({ page: 'out', ...(value === '' ? {} : { part: value }) })
              }
            >
              <option value="">{say('out.all_worksheets')}</option>
              <For each={book.catalog().worksheets}>
                {(definition) => (
                  <option value={definition.id} selected={definition.id === place().part}>
                    {worksheetLabel(definition)}
                  </option>
                )}
              </For>
            </select>
          </label>
        </form>
        <ScenarioChoice left={left()} onChange={setLeft} />
        <Show when={scenarios().length > 0} fallback={<p class="warm">{say('out.no_scenario')}</p>}>
          <ul class="lines ways">
            <li>
              <button type="button" class="act" onClick={() => print()}>
                {say('page.print')}
              </button>
              <span class="when">{say('out.print_says')}</span>
            </li>
            <li>
              <button type="button" class="act" onClick={() => void saveSpreadsheet()}>
                {say('out.ods')}
              </button>
              <span class="when">{say('out.ods_says')}</span>
            </li>
            <li>
              <button
                type="button"
                class="act"
                onClick={() => save(worksheetCsv(book, definitions(), scenarios()), 'text/csv', 'csv')}
              >
                {say('out.csv')}
              </button>
              <span class="when">{say('out.csv_says')}</span>
            </li>
          </ul>
          <Show when={small() > 0}>
            <p class="quiet" role="status">
              {say('out.small', { count: small(), points: SMALL })}
            </p>
          </Show>
          <h2>{say('out.preview')}</h2>
        </Show>
      </div>
      <Show when={scenarios().length > 0}>
        <For each={sheets()}>
          {(sheet) => (
            <PaperSheet
              sheet={sheet}
              notebook={book.notebook().name}
              onScale={(scale) => setScales((now) => ({ ...now, [sheet.title]: scale }))}
            />
          )}
        </For>
      </Show>
    </article>
  )
}
