import { HighlightStyle, LRLanguage, syntaxHighlighting } from '@codemirror/language'
import type { Extension } from '@codemirror/state'
import { styleTags, tags } from '@lezer/highlight'
import { parser } from '../../worksheet/formula.grammar'

/** The grammar that reads formulas everywhere, in the editor's clothes. */
const LANGUAGE = LRLanguage.define({
  name: 'formula',
  parser: parser.configure({
    props: [
      styleTags({
        Number: tags.number,
        Text: tags.string,
        Name: tags.variableName,
        FunctionName: tags.function(tags.variableName),
        'Power Times Plus Join Compare PercentSign Separator': tags.operator,
        'Open Close': tags.paren,
      }),
    ],
  }),
})

const LOOK = HighlightStyle.define([
  { tag: tags.variableName, color: 'var(--pen)' },
  { tag: tags.function(tags.variableName), color: 'var(--ink)', fontWeight: '600' },
  { tag: tags.number, color: 'var(--ink)' },
  { tag: tags.string, color: 'var(--ink)', fontStyle: 'italic' },
  { tag: [tags.operator, tags.paren], color: 'var(--grey)' },
])

export const formulaLanguage: Extension = [LANGUAGE, syntaxHighlighting(LOOK)]
