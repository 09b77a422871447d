import { functionsChlorine } from './functions-chlorine'
import { functionsPlan } from './functions-plan'
import { functionsPool } from './functions-pool'
import { functionsWater } from './functions-water'

/** For each locked function `function.<NAME>.says`, and `function.<NAME>.<parameter>` for each of its parameters. */
export const functions = { ...functionsPool, ...functionsWater, ...functionsChlorine, ...functionsPlan } as const
