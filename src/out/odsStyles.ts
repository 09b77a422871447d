import { figureStyle, MOST_DECIMALS, STYLE } from './odsCells'
import { NAMESPACES } from './odsNamespaces'
import { document, element } from './xml'

const DECIMALS = Array.from({ length: MOST_DECIMALS + 1 }, (_, decimals) => decimals)

/** The styles that the content names: widths, figures by their decimals, assumptions set apart. */
export function automaticStyles(): string {
  return element(
    'office:automatic-styles',
    {},
    ...Object.entries({ wide: '6.5cm', name: '4.2cm', unit: '3cm', cell: '3.2cm' }).map(([name, width]) =>
      element(
        'style:style',
        { 'style:name': name, 'style:family': 'table-column' },
        element('style:table-column-properties', { 'style:column-width': width }),
      ),
    ),
    ...DECIMALS.map((decimals) =>
      element(
        'number:number-style',
        { 'style:name': `number${decimals}` },
        element('number:number', {
          'number:decimal-places': decimals,
          'number:min-decimal-places': decimals,
          'number:min-integer-digits': 1,
        }),
      ),
    ),
    cellStyle(STYLE.title, {}, { 'fo:font-size': '14pt', 'fo:font-weight': 'bold' }),
    cellStyle(STYLE.head, { 'fo:border-bottom': '0.5pt solid #1d2024', 'fo:wrap-option': 'wrap' }, BOLD),
    cellStyle(
      STYLE.headFigure,
      { 'fo:border-bottom': '0.5pt solid #1d2024', 'fo:wrap-option': 'wrap' },
      BOLD,
      {},
      { 'fo:text-align': 'end' },
    ),
    cellStyle(STYLE.group, {}, BOLD),
    cellStyle(STYLE.quiet, { 'fo:padding-left': '0.25cm' }, { 'fo:color': '#53575d' }),
    cellStyle(STYLE.label, {}, {}),
    cellStyle(STYLE.wrap, { 'fo:wrap-option': 'wrap', 'style:vertical-align': 'top' }, {}),
    ...DECIMALS.map((decimals) => figure(decimals, false)),
    ...DECIMALS.map((decimals) => figure(decimals, true)),
  )
}

const BOLD = { 'fo:font-weight': 'bold' }

function figure(decimals: number, assumed: boolean): string {
  return cellStyle(
    figureStyle(decimals, assumed),
    assumed ? { 'fo:border': '0.5pt dashed #53575d' } : {},
    assumed ? { 'fo:font-style': 'italic' } : {},
    { 'style:data-style-name': `number${decimals}` },
  )
}

function cellStyle(
  name: string,
  cell: Readonly<Record<string, string>>,
  text: Readonly<Record<string, string>>,
  more: Readonly<Record<string, string>> = {},
  paragraph: Readonly<Record<string, string>> = {},
): string {
  return element(
    'style:style',
    { 'style:name': name, 'style:family': 'table-cell', ...more },
    element('style:table-cell-properties', cell),
    element('style:paragraph-properties', paragraph),
    element('style:text-properties', text),
  )
}

/** `styles.xml`: the page that a sheet is printed on, one page wide and one high. */
export function stylesXml(): string {
  return document(
    element(
      'office:document-styles',
      { ...NAMESPACES, 'office:version': '1.3' },
      element('office:styles', {}, element('style:style', { 'style:name': 'Default', 'style:family': 'table-cell' })),
      element(
        'office:automatic-styles',
        {},
        element(
          'style:page-layout',
          { 'style:name': 'page' },
          element('style:page-layout-properties', {
            'fo:page-width': '29.7cm',
            'fo:page-height': '21cm',
            'style:print-orientation': 'landscape',
            'fo:margin': '1.2cm',
            'style:scale-to-X': 1,
            'style:scale-to-Y': 1,
          }),
        ),
      ),
      element(
        'office:master-styles',
        {},
        element('style:master-page', { 'style:name': 'Default', 'style:page-layout-name': 'page' }),
      ),
    ),
  )
}
