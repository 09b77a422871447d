import { LEAST_VOLUME, MOST_VOLUME } from '../chemistry/volumeOutside'
import type { Parameter } from './define'

/** The volume of the water, as every function takes it. */
export const VOLUME: Parameter = { name: 'volume', unit: 'm³', min: LEAST_VOLUME, max: MOST_VOLUME }
