import type { Value } from '../functions/define'
import type { Column } from './bench'

/** What a product is used for. */
export type Role =
  | 'acid'
  | 'base'
  | 'bicarbonate'
  | 'borate'
  | 'calcium'
  | 'chlorine'
  | 'stabilizer'
  | 'salt'
  | 'neutralizer'

/** A product on hand. `strength` and `basis` as on its label; `pack` in kg, or in L for a liquid; `price` a pack. */
export interface ShelfProduct {
  readonly role: Role
  readonly product: string
  readonly strength?: number
  readonly basis?: string
  readonly pack?: number
  readonly price?: number
}

export type Shelf = readonly ShelfProduct[]

interface RoleRows {
  /** `acid` where the rows are acid_product, acid_strength, acid_strength_basis */
  readonly rows?: string
  /** answers that hold the amount: in litres, in kilograms */
  readonly volume?: string
  readonly mass: string
  /** the product where none has to be chosen */
  readonly product?: string
  /** the row that holds its purity, 0 to 1, instead of a strength */
  readonly purity?: string
  /** the rows that hold the size of its pack, by the unit that it is dosed in */
  readonly pack: { readonly kg: string; readonly L?: string }
}

export const ROLES: Readonly<Record<Role, RoleRows>> = {
  acid: {
    rows: 'acid',
    volume: 'acid_volume',
    mass: 'acid_mass',
    pack: { kg: 'acid_pack_mass', L: 'acid_pack_volume' },
  },
  base: { rows: 'base', mass: 'soda_ash_mass', product: 'sodium_carbonate', pack: { kg: 'base_pack_mass' } },
  bicarbonate: { mass: 'bicarbonate_mass', product: 'sodium_bicarbonate', pack: { kg: 'bicarbonate_pack_mass' } },
  borate: { rows: 'borate', mass: 'borate_mass', pack: { kg: 'borate_pack_mass' } },
  calcium: { rows: 'calcium', mass: 'calcium_product_mass', pack: { kg: 'calcium_pack_mass' } },
  chlorine: {
    rows: 'chlorine',
    volume: 'chlorine_product_volume',
    mass: 'chlorine_product_mass',
    pack: { kg: 'chlorine_pack_mass', L: 'chlorine_pack_volume' },
  },
  stabilizer: {
    mass: 'cyanuric_acid_mass',
    product: 'cyanuric_acid',
    purity: 'stabilizer_purity',
    pack: { kg: 'stabilizer_pack_mass' },
  },
  neutralizer: { rows: 'neutralizer', mass: 'neutralizer_mass', pack: { kg: 'neutralizer_pack_mass' } },
  salt: { mass: 'salt_mass', product: 'salt', purity: 'salt_purity', pack: { kg: 'bag_mass' } },
}

/** The products to choose from: those on the shelf, else the one that the column names. */
export function productsFor(role: Role, shelf: Shelf, column: Column): readonly ShelfProduct[] {
  const onHand = shelf.filter((item) => item.role === role)
  if (onHand.length > 0) return onHand
  const { rows, product, purity } = ROLES[role]
  const number = (name: string | undefined) => asNumber(name === undefined ? undefined : column.get(name))
  const named = rows === undefined ? undefined : column.get(`${rows}_product`)
  if (typeof named !== 'string') {
    if (product === undefined) return []
    const strength = 100 * (number(purity) ?? 1)
    return [{ role, product, strength, basis: 'mass_percent' }]
  }
  const basis = column.get(`${rows}_strength_basis`)
  return [
    {
      role,
      product: named,
      ...given('strength', number(`${rows}_strength`)),
      ...given('basis', typeof basis === 'string' ? basis : undefined),
    },
  ]
}

/** The size of a product's pack as the worksheets have it, where the shelf says nothing of it. */
export function packIn(role: Role, unit: 'kg' | 'L', column: Column): number | undefined {
  const row = ROLES[role].pack[unit]
  return asNumber(row === undefined ? undefined : column.get(row))
}

/** The answer that holds the mass of a product: bases are told apart, each has a row of its own. */
export function massRow({ role, product }: ShelfProduct): string {
  return role === 'base' ? (BASE_ROWS[product] ?? ROLES.base.mass) : ROLES[role].mass
}

const BASE_ROWS: Readonly<Record<string, string>> = {
  sodium_bicarbonate: 'bicarbonate_mass',
  sodium_hydroxide: 'caustic_mass',
}

/** How a product is told to the worksheet that doses it. */
export function labelOf({ role, product, strength, basis }: ShelfProduct): Readonly<Record<string, Value | undefined>> {
  const { rows, purity } = ROLES[role]
  if (rows !== undefined) {
    return { [`${rows}_product`]: product, [`${rows}_strength`]: strength, [`${rows}_strength_basis`]: basis }
  }
  return purity !== undefined && strength !== undefined ? { [purity]: strength / 100 } : {}
}

function asNumber(value: Value | undefined): number | undefined {
  return typeof value === 'number' ? value : undefined
}

function given<K extends string, V>(key: K, value: V | undefined): { readonly [Key in K]?: V } {
  return value === undefined ? {} : ({ [key]: value } as { readonly [Key in K]: V })
}
