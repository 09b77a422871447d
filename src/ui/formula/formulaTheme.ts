import { EditorView } from '@codemirror/view'

/** The page's own colours and faces; custom properties reach into the shadow root. */
export const formulaTheme = EditorView.theme({
  '&': { color: 'var(--ink)', background: 'transparent', fontSize: '0.9375rem' },
  '&.cm-focused': { outline: 'none' },
  '.cm-scroller': { fontFamily: 'var(--sans)', lineHeight: '1.6', overflowX: 'auto', maxHeight: '9rem' },
  '.cm-content': { padding: '0.45rem 0', caretColor: 'var(--pen)', minHeight: '1.5rem' },
  '.cm-line': { padding: '0 0.6rem' },
  '.cm-cursor': { borderLeftColor: 'var(--pen)', borderLeftWidth: '2px' },
  '&.cm-focused .cm-selectionBackground, .cm-selectionBackground': { background: 'var(--band)' },
  '.cm-matchingBracket, &.cm-focused .cm-matchingBracket': { background: 'var(--band)', color: 'var(--ink)' },
  '.cm-nonmatchingBracket, &.cm-focused .cm-nonmatchingBracket': {
    background: 'var(--warm-wash)',
    color: 'var(--warm)',
  },
  '.cm-fault': { textDecoration: 'underline wavy var(--warm) 1px', textUnderlineOffset: '0.25em' },
  '.cm-tooltip': {
    background: 'var(--paper)',
    color: 'var(--ink)',
    border: '1px solid var(--rule-strong)',
    borderRadius: '3px',
    boxShadow: '0 0.4rem 1.5rem var(--shade)',
  },
  '.cm-tooltip.cm-tooltip-autocomplete > ul': {
    fontFamily: 'var(--sans)',
    maxHeight: '15rem',
    maxWidth: 'min(30rem, 92vw)',
    minWidth: 'min(22rem, 92vw)',
  },
  '.cm-tooltip.cm-tooltip-autocomplete > ul > li': {
    display: 'flex',
    flexWrap: 'wrap',
    columnGap: '0.75rem',
    alignItems: 'baseline',
    padding: '0.3rem 0.7rem',
    lineHeight: '1.35',
  },
  '.cm-tooltip-autocomplete ul li[aria-selected]': { background: 'var(--wash)', color: 'var(--pen)' },
  '.cm-completionLabel': { flex: '1 1 auto', overflowWrap: 'anywhere' },
  '.cm-completionDetail': {
    color: 'var(--grey)',
    fontStyle: 'normal',
    fontSize: '0.8125rem',
    margin: '0',
    overflowWrap: 'anywhere',
    whiteSpace: 'normal',
  },
  '.cm-says': { flex: '1 0 100%', color: 'var(--grey)', fontSize: '0.8125rem', whiteSpace: 'normal' },
})
