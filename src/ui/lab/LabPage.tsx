import { say } from '../../words/say'

export function LabPage() {
  return (
    <article class="text-page">
      <h1>{say('page.title.lab')}</h1>
    </article>
  )
}
