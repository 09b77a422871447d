let tell: () => void = () => undefined

/** Resolves when the engine has answered for the first time: what only the next visit needs waits for it. */
export const firstNumbers = new Promise<void>((resolve) => {
  tell = resolve
})

export function tellFirstNumbers(): void {
  tell()
}
