import { Show } from 'solid-js'
import { problemsIntake } from '../../words/en/problems-intake'
import { results } from '../../words/en/results'
import { addWords, say } from '../../words/say'
import { FileButton } from '../notebooks/FileButton'
import { goTo, placeLink, usePlace } from '../shell/place'
import { KeptImport } from './ImportView'
import { KeptFiles } from './KeptFiles'
import { labFile, setLabFile } from './labFile'
import { ReadFile } from './ReadFile'

addWords({ ...problemsIntake, ...results })

/** Lab files: one that is chosen is read in here; one that is kept is opened again under its own address. */
export function LabPage() {
  const place = usePlace()
  const opened = () => (place().page === 'lab' ? place().part : undefined)
  return (
    <article class="text-page lab">
      <h1>{say('page.title.lab')}</h1>
      <p class="intro">{say('page.lab.intro')}</p>
      <div class="acts">
        <FileButton
          label={say('page.lab.choose')}
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          onFile={(file) => {
            setLabFile(file)
            goTo({ page: 'lab' })
          }}
        />
        <Show when={opened()}>
          <a class="act" href={placeLink({ page: 'lab' })}>
            {say('page.lab.back')}
          </a>
        </Show>
        <Show when={opened() === undefined && labFile()}>{(file) => <span class="quiet">{file().name}</span>}</Show>
      </div>
      <Show
        when={opened()}
        keyed
        fallback={
          <Show when={labFile()} keyed fallback={<KeptFiles />}>
            {(file) => <ReadFile file={file} />}
          </Show>
        }
      >
        {(id) => <KeptImport id={id} />}
      </Show>
    </article>
  )
}
