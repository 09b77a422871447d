// The small face of Zod: a quarter of the size, and the page reads stored notebooks before it shows the first number.
import * as z from 'zod/mini'
import { QUANTITY_NAME } from '../worksheet/quantityName'
import { isReservedKey } from '../worksheet/readJson'
import { LIMITS } from './limits'

/** Compiled checks would need `eval`, which the page's Content-Security-Policy forbids. */
z.config({ jitless: true })

const DATE = /^(\d{4}-\d\d-\d\d(T\d\d:\d\d(:\d\d(\.\d{1,9})?)?(Z|[+-]\d\d:\d\d)?)?)?$/

export const upTo = (length: number) => z.string().check(z.maxLength(length))
export const written = (pattern: RegExp) => z.string().check(z.regex(pattern))

export const unreserved = z.refine<string>((key) => !isReservedKey(key))

export const idSchema = written(/^[A-Za-z0-9_-]{1,64}$/).check(unreserved)
export const quantitySchema = written(QUANTITY_NAME).check(unreserved)
export const nameSchema = upTo(LIMITS.name)
export const noteSchema = upTo(LIMITS.note)
/** ISO date, or date and time; empty when not known */
export const dateSchema = written(DATE)
export const basisSchema = written(/^[A-Za-z][A-Za-z_]{0,63}$/)
export const amountSchema = z.number().check(z.positive(), z.maximum(1e9))

/** A record with at most so many entries. */
export function record<K extends z.ZodMiniString, V extends z.ZodMiniType>(key: K, entry: V, most: number) {
  return z.record(key, entry).check(z.refine((entries) => Object.keys(entries).length <= most, { params: { most } }))
}
