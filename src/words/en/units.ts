/** Names of units as sentences use them, and choices of a display profile. */
export const units = {} as const
