import {
  acceptCompletion,
  autocompletion,
  type Completion,
  type CompletionContext,
  type CompletionResult,
  closeCompletion,
  completionStatus,
  moveCompletionSelection,
  selectedCompletionIndex,
  setSelectedCompletion,
  startCompletion,
} from '@codemirror/autocomplete'
import { history, historyKeymap, standardKeymap } from '@codemirror/commands'
import { bracketMatching } from '@codemirror/language'
import { EditorState, Prec, StateEffect, StateField } from '@codemirror/state'
import { Decoration, type DecorationSet, drawSelection, EditorView, keymap } from '@codemirror/view'
import type { Candidate } from './candidates'
import { complete } from './complete'
import type { Fault } from './faultsIn'
import { formulaLanguage } from './formulaLanguage'
import { formulaTheme } from './formulaTheme'

export interface FormulaViewOptions {
  /** the editor is put into a shadow root of this element */
  readonly host: HTMLElement
  readonly text: string
  readonly selection: readonly [from: number, to: number]
  readonly label: string
  readonly candidates: () => readonly Candidate[]
  readonly faults: (text: string) => readonly Fault[]
  readonly onChange: (text: string) => void
  /** the caret moved or the text changed */
  readonly onPlace: (text: string, at: number) => void
  readonly onFaults: (faults: readonly Fault[]) => void
  /** a key that leads out of the editor; false where the browser may do with it what it does */
  readonly onKey: (key: 'Enter' | 'Escape' | 'Tab', shift: boolean) => boolean
}

export interface FormulaView {
  /** looks for faults anew, where what is asked of the formula changed */
  judge(): void
  focus(): void
  /** offers names where one was begun before the editor came */
  offer(): void
  destroy(): void
}

/** Until a reader pauses, what is half written is no fault; milliseconds. */
const PAUSE = 450

/** What is only not written yet is told when it is taken. */
const UNFINISHED = new Set(['formula_empty', 'formula_ends_early', 'formula_not_closed'])

const setFaults = StateEffect.define<readonly Fault[]>()

const faultMarks = StateField.define<DecorationSet>({
  create: () => Decoration.none,
  update(marks, transaction) {
    for (const effect of transaction.effects) {
      if (!effect.is(setFaults)) continue
      const length = transaction.newDoc.length
      const found = effect.value.filter(({ from, to }) => from < to && to <= length)
      return Decoration.set(
        found.map(({ from, to }) => Decoration.mark({ class: 'cm-fault' }).range(from, to)),
        true,
      )
    }
    return marks.map(transaction.changes)
  },
  provide: (field) => EditorView.decorations.from(field),
})

/** A line for formulas. The styles are adopted by the shadow root, so that no policy has to let styles into the page. */
export function createFormulaView(options: FormulaViewOptions): FormulaView {
  const root = options.host.shadowRoot ?? options.host.attachShadow({ mode: 'open' })
  // Keys in here are the editor's; what leads out of it is handed on by name.
  options.host.addEventListener('keydown', (event) => event.stopPropagation())
  let pause: ReturnType<typeof setTimeout> | undefined

  function judge(view: EditorView): void {
    const faults = options.faults(view.state.doc.toString()).filter(({ problem }) => !UNFINISHED.has(problem.code))
    view.dispatch({ effects: setFaults.of(faults) })
    options.onFaults(faults)
  }

  function source(context: CompletionContext): CompletionResult | null {
    const found = complete(context.state.doc.toString(), context.pos, options.candidates(), context.explicit)
    return found && { from: found.from, options: found.options.map(asCompletion), filter: false }
  }

  const out = (key: 'Enter' | 'Escape' | 'Tab', shift = false) => options.onKey(key, shift)
  function entered(editor: EditorView): boolean {
    closeCompletion(editor)
    return out('Enter')
  }

  const view = new EditorView({
    root,
    parent: root,
    state: EditorState.create({
      doc: options.text,
      selection: { anchor: options.selection[0], head: options.selection[1] },
      extensions: [
        Prec.highest(
          keymap.of([
            { key: 'ArrowDown', run: moveCompletionSelection(true) },
            { key: 'ArrowUp', run: moveCompletionSelection(false) },
            { key: 'PageDown', run: moveCompletionSelection(true, 'page') },
            { key: 'PageUp', run: moveCompletionSelection(false, 'page') },
            { key: 'Ctrl-Space', run: startCompletion },
            // What was chosen with the arrows is taken; a list that merely opened does not stand in Enter's way.
            {
              key: 'Enter',
              run: (v) => acceptCompletion(v) || entered(v),
              shift: () => out('Enter', true),
            },
            { key: 'Tab', run: (v) => acceptFirst(v) || out('Tab'), shift: () => out('Tab', true) },
            { key: 'Escape', run: (v) => closeCompletion(v) || out('Escape') },
          ]),
        ),
        keymap.of([...historyKeymap, ...standardKeymap]),
        history(),
        drawSelection(),
        formulaLanguage,
        bracketMatching(),
        EditorView.lineWrapping,
        autocompletion({
          override: [source],
          selectOnOpen: false,
          icons: false,
          defaultKeymap: false,
          interactionDelay: 0,
          maxRenderedOptions: 60,
          addToOptions: [{ render: (completion) => saysElement(completion), position: 90 }],
        }),
        faultMarks,
        formulaTheme,
        EditorView.contentAttributes.of({ 'aria-label': options.label, spellcheck: 'false', autocapitalize: 'off' }),
        EditorView.updateListener.of((update) => {
          const text = update.state.doc.toString()
          if (update.docChanged) {
            options.onChange(text)
            clearTimeout(pause)
            pause = setTimeout(() => judge(update.view), PAUSE)
          }
          if (update.docChanged || update.selectionSet) options.onPlace(text, update.state.selection.main.head)
        }),
      ],
    }),
  })
  if (options.text.trim() !== '') judge(view)
  options.onPlace(options.text, options.selection[1])

  return {
    judge: () => judge(view),
    focus() {
      // It may have been made while it was out of sight, where nothing can be measured.
      view.requestMeasure()
      view.focus()
    },
    offer() {
      if (isAfterWord(view)) startCompletion(view)
    },
    destroy() {
      clearTimeout(pause)
      view.destroy()
    },
  }
}

function isAfterWord({ state }: EditorView): boolean {
  const at = state.selection.main.head
  return /[a-z_]/i.test(state.doc.sliceString(Math.max(at - 1, 0), at))
}

function acceptFirst(view: EditorView): boolean {
  if (completionStatus(view.state) !== 'active') return false
  if ((selectedCompletionIndex(view.state) ?? -1) < 0) view.dispatch({ effects: setSelectedCompletion(0) })
  return acceptCompletion(view)
}

/** A function is written with its parenthesis, a scenario with the point after which a quantity follows. */
function asCompletion({ kind, name, detail, says }: Candidate): Completion & { says: string } {
  const label = kind === 'function' ? `${name}(` : name
  return { label, displayLabel: name, detail, says, type: kind, apply: label }
}

function saysElement(completion: Completion): Node {
  const element = document.createElement('span')
  element.className = 'cm-says'
  element.textContent = 'says' in completion ? String(completion.says) : ''
  return element
}
