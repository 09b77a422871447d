import { readFileSync } from 'node:fs'
import { gunzipSync } from 'node:zlib'
import { RelaxNGValidator, XmlDocument } from 'libxml2-wasm'

/*
 * The RelaxNG schemas that OASIS publishes with the standard: OpenDocument 1.3, committee specification 02 of 30 October
 * 2020 (docs.oasis-open.org/office/OpenDocument/v1.3), and the package manifest's of version 1.2 (the manifest of 1.3
 * differs in what it says of encryption and in its version). They came in the compact syntax and were turned into XML;
 * their notices, which allow copies of them, stand at their heads.
 */
const SCHEMAS = {
  document: 'test/published/odf-1.3-schema.rng.gz',
  manifest: 'test/published/odf-1.2-manifest-schema.rng.gz',
} as const

const validators = new Map<string, RelaxNGValidator>()

/** Reading the schema takes longer than all that is asked of it, so it is read once. */
function validatorOf(schema: keyof typeof SCHEMAS): RelaxNGValidator {
  const known = validators.get(schema)
  if (known) return known
  const grammar = XmlDocument.fromString(gunzipSync(readFileSync(SCHEMAS[schema])).toString())
  const validator = RelaxNGValidator.fromDoc(grammar)
  validators.set(schema, validator)
  return validator
}

/** Why a file of the package breaks the standard's schema; empty when it keeps to it. */
export function schemaFaults(schema: keyof typeof SCHEMAS, xml: string): string {
  const document = XmlDocument.fromString(xml)
  try {
    validatorOf(schema).validate(document)
    return ''
  } catch (error) {
    return String(error)
  } finally {
    document.dispose()
  }
}
