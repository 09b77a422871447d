/** Runs something once the browser has drawn what stands on the page now; in a hidden tab, once it is shown again. */
export function afterDrawing(run: () => void): void {
  requestAnimationFrame(() => setTimeout(run))
}
