import { resolve } from 'node:path'
import { lezer } from '@lezer/generator/rollup'
import { type Plugin, runnerImport, type UserConfig } from 'vite'
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

const app: UserConfig = {
  plugins: [lezer(), solid(), builtData(), contentSecurityPolicy()],
  worker: { format: 'es', plugins: () => [lezer(), withoutUnusedFunctions()] },
  build: { outDir: 'dist/app', target: 'es2023', sourcemap: false },
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
    projects: [
      {
        plugins: [lezer()],
        test: {
          name: 'core',
          environment: 'node',
          include: ['test/**/*.test.ts'],
          exclude: ['test/browser/**'],
          setupFiles: ['test/allWords.ts'],
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
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
}))
