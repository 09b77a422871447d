import { type Failure, fail } from './failure'
import { outside } from './outside'

/** Ids of the shapes. Oval is an ellipse; stadium has straight sides and a half circle at each end. */
export const POOL_SHAPES = ['rectangle', 'round', 'oval', 'stadium', 'freeform'] as const
export type PoolShape = (typeof POOL_SHAPES)[number]

/** What a tape measures at the water line, in m and m². Which of them are read depends on the shape. */
export interface PoolPlan {
  /** overall: of a stadium with its two half circles */
  readonly length: number | undefined
  readonly width: number | undefined
  readonly diameter: number | undefined
  /** m², for a freeform pool */
  readonly surfaceArea: number | undefined
}

export const LONGEST_SIDE = 500
export const LARGEST_AREA = 100_000

/**
 * Area of the water's surface, m².
 *
 * Sides 0.1 to 500 m, area to 100 000 m². A measure that the shape needs and that is missing is named; a stadium that is
 * wider than long is refused. Plane geometry.
 */
export function poolArea(shape: PoolShape, plan: PoolPlan): number | Failure {
  const { length, width, diameter, surfaceArea } = plan
  if (shape === 'freeform') {
    if (surfaceArea === undefined) return fail('missing', 'surface_area')
    return outside('surface_area', surfaceArea, 0.01, LARGEST_AREA) ?? surfaceArea
  }
  if (shape === 'round') {
    if (diameter === undefined) return fail('missing', 'diameter')
    return outside('diameter', diameter, 0.1, LONGEST_SIDE) ?? (Math.PI / 4) * diameter * diameter
  }
  if (length === undefined) return fail('missing', 'length')
  if (width === undefined) return fail('missing', 'width')
  const refused = outside('length', length, 0.1, LONGEST_SIDE) ?? outside('width', width, 0.1, LONGEST_SIDE)
  if (refused) return refused
  if (shape === 'rectangle') return length * width
  if (shape === 'oval') return (Math.PI / 4) * length * width
  if (shape === 'stadium') {
    return outside('length', length, width, LONGEST_SIDE) ?? (length - width) * width + (Math.PI / 4) * width * width
  }
  return fail('out_of_range', 'shape', { value: String(shape) })
}
