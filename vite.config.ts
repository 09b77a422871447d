import { resolve } from 'node:path'
import { lezer } from '@lezer/generator/rollup'
import { type Plugin, runnerImport, type UserConfig } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'
import solid from 'vite-plugin-solid'
import { defineConfig } from 'vitest/config'

/** The policy is added at build only: the development server has to inject styles. */
const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self' data: blob:; worker-src 'self'; connect-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'"

function contentSecurityPolicy(): Plugin {
  return {
    name: 'content-security-policy',
    apply: 'build',
    transformIndexHtml: () => [
      { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY }, injectTo: 'head-prepend' },
    ],
  }
}

/** A module `*.build.ts` is run now, and what it exports by default is all that goes into the page: plain data. */
function builtData(): Plugin {
  return {
    name: 'built-data',
    async load(id) {
      if (!id.endsWith('.build.ts')) return null
      const { module, dependencies } = await runnerImport<{ default: unknown }>(id, {
        configFile: false,
        plugins: [lezer()],
        logLevel: 'warn',
      })
      for (const file of dependencies) this.addWatchFile(resolve(file))
      return `export default ${JSON.stringify(module.default)}`
    },
  }
}

/** Groups of the formula engine's own functions of which no formula of ours may call any. */
const UNUSED =
  /\b(Address|Array|BitShift|BitwiseLogicOperations|Code|Complex|ConditionalAggregation|CountBlank|CountUnique|Database|DateTime|Delta|Financial|FormulaText|Hyperlink|Information|Lookup|Matrix|Percentile|RadixConversion|Random|Roman|Sequence|Sort|Sumprod|Text|Unique)Plugin\b/

/** Leaves them out of the worker, a tenth of its size; it refuses to start where one is lacking that formulas may call. */
function withoutUnusedFunctions(): Plugin {
  return {
    name: 'without-unused-functions',
    transform(code, id) {
      if (!id.endsWith('/hyperformula/es/interpreter/plugin/index.mjs')) return null
      const lines = code.split('\n').filter((line) => !UNUSED.test(line))
      return { code: lines.join('\n'), map: null }
    },
  }
}

/**
 * Keeps the whole page in the browser, so that a second visit needs no network. A new version is fetched beside the old one and
 * waits until the reader takes it; `src/ui/offline` registers the worker and says so. The development server has none.
 */
const offline = VitePWA({
  mode: 'production',
  strategies: 'generateSW',
  registerType: 'prompt',
  injectRegister: false,
  manifest: {
    id: '/',
    name: 'Basinbook',
    short_name: 'Basinbook',
    description: 'A notebook of water-balance worksheets for swimming pools that make their chlorine from salt.',
    lang: 'en',
    start_url: '.',
    display: 'standalone',
    background_color: '#eae8e0',
    theme_color: '#eae8e0',
    icons: [
      { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
      { src: 'icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
      { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
      { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  },
  workbox: {
    globPatterns: ['**/*.{html,js,css,woff2,svg,png}'],
    dontCacheBustURLsMatching: /^assets\//,
    maximumFileSizeToCacheInBytes: 8_000_000,
    cleanupOutdatedCaches: true,
    clientsClaim: true,
    inlineWorkboxRuntime: true,
    sourcemap: false,
  },
})

const app: UserConfig = {
  plugins: [lezer(), solid(), builtData(), contentSecurityPolicy(), offline],
  worker: { format: 'es', plugins: () => [lezer(), withoutUnusedFunctions()] },
  build: { outDir: 'dist/app', target: 'es2023', sourcemap: false },
  // a worker is under the policy of its own response, not of the page that started it
  preview: { headers: { 'Content-Security-Policy': POLICY } },
}

/** The commands for Node: one file each, no page code in them. */
const headless: UserConfig = {
  plugins: [lezer()],
  build: {
    ssr: true,
    outDir: 'dist/headless',
    target: 'node20',
    rollupOptions: {
      input: { evaluate: resolve('src/headless/evaluate.ts'), intake: resolve('src/headless/intake.ts') },
    },
  },
  ssr: { noExternal: true },
}

export default defineConfig(({ mode }) => ({
  ...(mode === 'headless' ? headless : app),
  test: {
    // one for each of the two cores that the tests are meant for; the default leaves one of them idle
    maxWorkers: 2,
    projects: [
      {
        plugins: [lezer()],
        test: {
          name: 'core',
          environment: 'node',
          include: ['test/**/*.test.ts'],
          exclude: ['test/browser/**'],
          setupFiles: ['test/allWords.ts'],
          // a busy machine is no failure
          testTimeout: 60_000,
        },
      },
      {
        plugins: [lezer()],
        test: {
          name: 'bench',
          environment: 'node',
          include: ['test/bench/**/*.bench.ts'],
          globalSetup: ['test/browser/setup.ts'],
          fileParallelism: false,
          testTimeout: 300_000,
          hookTimeout: 120_000,
        },
      },
      {
        test: {
          name: 'browser',
          environment: 'node',
          include: ['test/browser/**/*.test.ts'],
          globalSetup: ['test/browser/setup.ts'],
          // a busy machine is no failure
          testTimeout: 180_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
}))
