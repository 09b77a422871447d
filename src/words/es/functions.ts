import { functionsChlorine } from './functions-chlorine'
import { functionsPlan } from './functions-plan'
import { functionsPool } from './functions-pool'
import { functionsWater } from './functions-water'

export const functions = { ...functionsPool, ...functionsWater, ...functionsChlorine, ...functionsPlan } as const
