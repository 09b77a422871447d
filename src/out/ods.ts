import { strToU8, type ZipOptions, zipSync } from 'fflate'
import { contentXml } from './odsContent'
import { NAMESPACES } from './odsNamespaces'
import { stylesXml } from './odsStyles'
import type { SheetBook } from './sheet'
import { document, element, escaped } from './xml'

/** The media type of an OpenDocument spreadsheet (ODF 1.3 part 3, appendix C). */
export const ODS_TYPE = 'application/vnd.oasis.opendocument.spreadsheet'

/**
 * Worksheets as an OpenDocument spreadsheet, version 1.3: the same bytes for the same content. `mimetype` comes first,
 * stored and without extra fields, so that the type can be read at a fixed place (ODF 1.3 part 2, 3.3).
 */
export function ods(book: SheetBook): Uint8Array<ArrayBuffer> {
  return zipSync({
    mimetype: [strToU8(ODS_TYPE), { ...WHEN, level: 0 }],
    'META-INF/manifest.xml': [strToU8(manifestXml()), WHEN],
    'content.xml': [strToU8(contentXml(book)), WHEN],
    'styles.xml': [strToU8(stylesXml()), WHEN],
    'meta.xml': [strToU8(metaXml(book)), WHEN],
  })
}

/** The first moment that a zip file can name, in whatever zone: the bytes must not depend on when they were made. */
const WHEN: ZipOptions = { mtime: new Date(1980, 0, 1), level: 6 }

function metaXml({ title, language }: SheetBook): string {
  return document(
    element(
      'office:document-meta',
      { ...NAMESPACES, 'office:version': '1.3' },
      element(
        'office:meta',
        {},
        element('meta:generator', {}, 'Basinbook/1'),
        element('dc:title', {}, escaped(title)),
        element('dc:language', {}, escaped(language)),
      ),
    ),
  )
}

function manifestXml(): string {
  const files = { '/': ODS_TYPE, 'content.xml': 'text/xml', 'styles.xml': 'text/xml', 'meta.xml': 'text/xml' }
  return document(
    element(
      'manifest:manifest',
      { 'xmlns:manifest': 'urn:oasis:names:tc:opendocument:xmlns:manifest:1.0', 'manifest:version': '1.3' },
      ...Object.entries(files).map(([path, type]) =>
        element('manifest:file-entry', {
          'manifest:full-path': path,
          'manifest:media-type': type,
          ...(path === '/' ? { 'manifest:version': '1.3' } : {}),
        }),
      ),
    ),
  )
}
