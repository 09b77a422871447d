import { type Failure, isFailure } from './failure'
import { outside } from './outside'
import { type PoolPlan, type PoolShape, poolArea } from './poolArea'
import { DEEPEST } from './poolMeanDepth'

/** Volume of the water, m³: surface × mean depth (0.02 to 30 m), upright walls. */
export function poolVolume(shape: PoolShape, plan: PoolPlan, meanDepth: number): number | Failure {
  const area = poolArea(shape, plan)
  if (isFailure(area)) return area
  return outside('water_depth_mean', meanDepth, 0.02, DEEPEST) ?? area * meanDepth
}
