/** This minute by the reader's clock, as the record dates things: `2026-05-01T09:30`. */
export function thisMinute(now = new Date()): string {
  return `${today(now)}T${two(now.getHours())}:${two(now.getMinutes())}`
}

export function today(now = new Date()): string {
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

function two(figure: number): string {
  return String(figure).padStart(2, '0')
}
