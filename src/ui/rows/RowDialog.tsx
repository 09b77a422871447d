import { createMemo, createSignal, createUniqueId, For, onMount, Show } from 'solid-js'
import { UNITS } from '../../units/unit'
import { rows as words } from '../../words/en/rows'
import type { Problem } from '../../words/problem'
import { addWords, say, sentence } from '../../words/say'
import { FormulaLine } from '../formula/FormulaLine'
import { nameFrom, type RowDraft } from './rowDraft'
import './rows.css'

addWords(words)

/** A row's label, name, unit and formula; for a row of entered numbers, what it accepts. */
export function RowDialog(props: {
  title: string
  draft: RowDraft
  /** `formula` a worked-out row, `number` an entered one, `choice` one of a list, of which only the label is changed here */
  kind: 'formula' | 'number' | 'choice'
  /** the name of a row that others may read already stays */
  nameStays: boolean
  /** in which unit what its formula gives is counted, where the row shows another */
  counts: (draft: RowDraft) => string
  /** why the row cannot have its name */
  nameFault: (draft: RowDraft) => Problem | null
  onKeep: (draft: RowDraft) => Promise<Problem | null>
  onClose: () => void
}) {
  let dialog: HTMLDialogElement | undefined
  const title = createUniqueId()
  const units = createUniqueId()
  const nameSaid = createUniqueId()
  const [draft, setDraft] = createSignal(props.draft)
  const [problem, setProblem] = createSignal<Problem | null>(null)
  const [named, setNamed] = createSignal(props.draft.name !== '')
  const nameFault = createMemo(() => props.nameFault(draft()))
  onMount(() => dialog?.showModal())

  function change(part: Partial<RowDraft>): void {
    setProblem(null)
    setDraft((now) => ({ ...now, ...part }))
  }

  async function keep(): Promise<void> {
    const trouble = await props.onKeep(draft())
    setProblem(trouble)
    if (trouble === null) dialog?.close()
  }

  const field = (
    part: keyof RowDraft,
    label: string,
    more: { readonly?: boolean; list?: string; short?: boolean } = {},
  ) => (
    <label classList={{ short: more.short ?? false }}>
      {label}
      <input
        class="field"
        value={String(draft()[part])}
        readonly={more.readonly ?? false}
        list={more.list}
        maxlength={200}
        autocomplete="off"
        spellcheck={false}
        onInput={(event) => change({ [part]: event.currentTarget.value })}
      />
    </label>
  )

  return (
    <dialog ref={dialog} class="row-dialog" aria-labelledby={title} onClose={() => props.onClose()}>
      <h2 id={title}>{props.title}</h2>
      <form
        novalidate
        onSubmit={(event) => {
          event.preventDefault()
          void keep()
        }}
      >
        <div class="fields">
          <label>
            {say('rows.label')}
            <input
              class="field"
              value={draft().label}
              maxlength={200}
              autocomplete="off"
              autofocus
              onInput={(event) => {
                const label = event.currentTarget.value
                change(named() ? { label } : { label, name: nameFrom(label) })
              }}
            />
          </label>
          <label>
            {say('rows.name')}
            <input
              class="field code"
              value={draft().name}
              aria-invalid={nameFault() !== null}
              aria-describedby={nameFault() ? nameSaid : undefined}
              readonly={props.nameStays}
              maxlength={64}
              autocomplete="off"
              autocapitalize="off"
              spellcheck={false}
              onInput={(event) => {
                setNamed(true)
                change({ name: event.currentTarget.value })
              }}
            />
          </label>
          <Show when={props.kind !== 'choice'}>
            {field('unit', say('rows.unit'), { list: units, short: true })}
            <datalist id={units}>
              <For each={UNITS.filter(({ dimension }) => dimension !== 'choice')}>
                {(unit) => <option value={unit.code} />}
              </For>
              <option value="truth">{say('rows.unit_yes_no')}</option>
            </datalist>
            {field('decimals', say('rows.decimals'), { short: true })}
          </Show>
        </div>
        <p role="status" id={nameSaid} class="name-fault warm">
          {/* what was refused as a whole says it itself */}
          <Show when={problem() === null && nameFault()}>{(trouble) => sentence(trouble())}</Show>
        </p>
        <Show when={props.kind === 'formula'}>
          <div class="formula-field">
            <span class="label">{say('rows.formula')}</span>
            <FormulaLine
              text={props.draft.formula}
              selection={[props.draft.formula.length, props.draft.formula.length]}
              label={say('rows.formula')}
              unit={() => (draft().asSaid ? null : draft().unit.trim() || '1')}
              counts={() => props.counts(draft())}
              onChange={(formula) => change({ formula })}
              onKey={(key) => {
                if (key === 'Enter') void keep()
                if (key === 'Escape') dialog?.close()
                return key !== 'Tab'
              }}
            />
          </div>
          <label class="check">
            <input
              type="checkbox"
              checked={draft().asSaid}
              onChange={(event) => change({ asSaid: event.currentTarget.checked })}
            />
            {say('rows.as_said')}
          </label>
        </Show>
        <Show when={props.kind === 'number'}>
          <div class="fields">
            {field('acceptFrom', say('rows.accept'), { short: true })}
            {field('acceptTo', say('rows.accept_to'), { short: true })}
          </div>
        </Show>
        <Show when={props.kind !== 'choice'}>
          <div class="fields">
            {field('from', say('rows.range'), { short: true })}
            {field('to', say('rows.range_to'), { short: true })}
          </div>
        </Show>
        <p role="alert" class="warm">
          <Show when={problem()}>{(trouble) => sentence(trouble())}</Show>
        </p>
        <div class="acts">
          <button type="button" class="act" onClick={() => dialog?.close()}>
            {say('rows.cancel')}
          </button>
          <button type="submit" class="act main">
            {say('rows.keep')}
          </button>
        </div>
      </form>
    </dialog>
  )
}
