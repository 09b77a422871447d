import { type Failure, fail } from './failure'
import { outside } from './outside'
import { LARGEST_AREA, LONGEST_SIDE } from './poolArea'

/** Depths of water, from the surface down to the floor, in m: never the height of the wall. */
export interface PoolDepths {
  readonly shallow: number
  /** at the deep end of the main floor; not taken: the floor is flat */
  readonly deep: number | undefined
  /** m², needed only where there is a hopper */
  readonly area: number | undefined
  readonly hopperLength: number | undefined
  readonly hopperWidth: number | undefined
  readonly hopperDepth: number | undefined
}

export const DEEPEST = 30

/**
 * Mean depth of the water, m: the depth which, times the surface, gives the volume. Walls are upright.
 *
 * The main floor is flat or slopes evenly from `shallow` to `deep`: (shallow + deep) / 2, exact for every plan that is the
 * same on both sides of its middle (all shapes but freeform). A hopper is a pit let into that floor: its depth is the
 * depth of water over its flat bottom, measured from the surface as the others are; its length and width are taken halfway
 * up its sides (the mean of top and bottom, where the sides slope). It adds
 * length × width × (hopper depth - deep) / area.
 *
 * Depths 0.02 to 30 m. A deep end that is shallower than the shallow one, a hopper above the floor or larger than the
 * pool is refused; so is a hopper of which one measure is missing. Geometry.
 */
export function poolMeanDepth(depths: PoolDepths): number | Failure {
  const { shallow, area, hopperLength, hopperWidth, hopperDepth } = depths
  const deep = depths.deep ?? shallow
  const refused = outside('depth_shallow', shallow, 0.02, DEEPEST) ?? outside('depth_deep', deep, shallow, DEEPEST)
  if (refused) return refused
  const floor = (shallow + deep) / 2
  if (hopperLength === undefined && hopperWidth === undefined && hopperDepth === undefined) return floor
  if (hopperLength === undefined) return fail('missing', 'hopper_length')
  if (hopperWidth === undefined) return fail('missing', 'hopper_width')
  if (hopperDepth === undefined) return fail('missing', 'hopper_depth')
  if (area === undefined) return fail('missing', 'surface_area')
  const wrong =
    outside('surface_area', area, 0.01, LARGEST_AREA) ??
    outside('hopper_length', hopperLength, 0.1, LONGEST_SIDE) ??
    outside('hopper_width', hopperWidth, 0.1, area / hopperLength) ??
    outside('hopper_depth', hopperDepth, deep, DEEPEST)
  return wrong ?? floor + (hopperLength * hopperWidth * (hopperDepth - deep)) / area
}
