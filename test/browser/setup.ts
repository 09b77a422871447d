import { build, preview } from 'vite'
import type { TestProject } from 'vitest/node'
import { findChromium } from './chromium'

declare module 'vitest' {
  interface ProvidedContext {
    address: string
    chromium: string
  }
}

/** Builds the page once and serves the build, as a person would get it; the tests drive it in Chromium. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const chromium = findChromium()
  // the test runner's own NODE_ENV would put the libraries' development builds into the page
  const { NODE_ENV = 'test' } = process.env
  process.env.NODE_ENV = 'production'
  await build({ logLevel: 'warn' }).finally(() => {
    process.env.NODE_ENV = NODE_ENV
  })
  const server = await preview({ preview: { port: 0, host: '127.0.0.1' }, logLevel: 'warn' })
  project.provide('address', server.resolvedUrls?.local[0] ?? '')
  project.provide('chromium', chromium)
  return () => server.close()
}
