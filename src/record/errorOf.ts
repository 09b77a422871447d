/**
 * Half width of the test that took a reading, in the quantity's canonical unit: within so much of it lies the water. Undefined where no
 * test is known for the quantity.
 * @param method the test, where the sample names it
 */
export type ErrorOf = (quantity: string, value: number, method?: string) => number | undefined
