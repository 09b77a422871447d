import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core'
import { inject } from 'vitest'

/** Flags for a Chromium that runs as root, without a display, asks nobody for anything, and draws with what two cores can spare. */
export const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--num-raster-threads=1',
  '--disable-gpu-compositing',
  '--disable-software-rasterizer',
  '--in-process-gpu',
]

export function launch(): Promise<Browser> {
  return chromium.launch({ executablePath: inject('chromium'), args: FLAGS })
}

/** What a page asked for and complained of, to be empty of what must not be. */
export interface Watched {
  readonly page: Page
  readonly context: BrowserContext
  /** addresses outside the page's own origin that were asked for */
  readonly foreign: string[]
  /** console errors, uncaught exceptions, violations of the Content-Security-Policy */
  readonly errors: string[]
}

export async function open(
  browser: Browser,
  options: {
    path?: string
    width?: number
    height?: number
    dark?: boolean
    context?: BrowserContext | undefined
  } = {},
): Promise<Watched> {
  const address = inject('address')
  const context =
    options.context ??
    (await browser.newContext({
      viewport: { width: options.width ?? 1440, height: options.height ?? 900 },
      colorScheme: options.dark ? 'dark' : 'light',
      locale: 'en-US',
      acceptDownloads: true,
      // what the service worker does has a test of its own; elsewhere it would fetch the whole page once for each test
      serviceWorkers: 'block',
    }))
  const page = await context.newPage()
  const foreign: string[] = []
  const errors: string[] = []
  page.on('request', (request) => {
    const url = request.url()
    if (!url.startsWith(address) && !url.startsWith('data:') && !url.startsWith('blob:')) foreign.push(url)
  })
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text())
  })
  page.on('pageerror', (error) => errors.push(String(error)))
  await page.goto(new URL(options.path ?? '', address).href)
  return { page, context, foreign, errors }
}
