import '../look/study.css'
import { For, Match, Switch } from 'solid-js'
import { study } from '../../words/en/study'
import { testMethods } from '../../words/en/test-methods'
import { addWords, say } from '../../words/say'
import { placeLink, usePlace } from '../shell/place'
import { ComparePart } from './ComparePart'
import { MattersPart } from './MattersPart'
import { SolvePart } from './SolvePart'
import { SweepPart } from './SweepPart'

addWords({ ...study, ...testMethods })

const PARTS = ['sweep', 'compare', 'solve', 'matters'] as const

/** What-ifs by many columns: charts, scenarios side by side, solving back, what matters most. */
export function StudyPage() {
  const place = usePlace()
  const part = () => PARTS.find((name) => name === place().part) ?? 'sweep'
  return (
    <article class="text-page study">
      <h1>{say('page.title.study')}</h1>
      <p class="intro">{say('page.study.intro')}</p>
      <nav class="parts" aria-label={say('page.study.parts')}>
        <For each={PARTS}>
          {(name) => (
            <a href={placeLink({ page: 'study', part: name })} aria-current={name === part() ? 'page' : undefined}>
              {say(`page.study.part.${name}`)}
            </a>
          )}
        </For>
      </nav>
      <Switch>
        <Match when={part() === 'sweep'}>
          <SweepPart />
        </Match>
        <Match when={part() === 'compare'}>
          <ComparePart />
        </Match>
        <Match when={part() === 'solve'}>
          <SolvePart />
        </Match>
        <Match when={part() === 'matters'}>
          <MattersPart />
        </Match>
      </Switch>
    </article>
  )
}
