/** For each locked function `function.<NAME>.says`, and `function.<NAME>.<parameter>` for each of its parameters. */
export const functions = {} as const
