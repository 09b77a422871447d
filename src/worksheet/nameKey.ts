import type { NameNode } from './compile'

/** What a name in a formula stands for: a quantity, in whichever scenario, or a solve's output as `water.lsi`. */
export function nameKey({ of, quoted, name }: NameNode): string {
  return of === null || isScenario({ of, quoted }) ? name : `${of}.${name}`
}

/** `baseline.ph` and `'Drain a third'.ph` read another scenario. */
export function isScenario({ of, quoted }: Pick<NameNode, 'of' | 'quoted'>): boolean {
  return of !== null && (quoted || of === 'baseline')
}
