import { lezer } from '@lezer/generator/rollup'
import { build } from 'vite'

/**
 * A module of ours as it ships: bundled, and run by Node itself. A test runner reads every import through a getter, which makes
 * tight loops over several files up to four times slower than they are.
 */
export async function built<Module>(entry: string): Promise<Module> {
  const made = await build({
    configFile: false,
    plugins: [lezer()],
    logLevel: 'silent',
    build: { lib: { entry, formats: ['es'] }, write: false, target: 'es2023', minify: false },
  })
  const output = Array.isArray(made) ? made[0]?.output : 'output' in made ? made.output : undefined
  const chunk = output?.find((part) => part.type === 'chunk')
  if (chunk?.type !== 'chunk') throw new Error(`nothing was built of ${entry}`)
  const url = `data:text/javascript;base64,${Buffer.from(chunk.code).toString('base64')}`
  return import(/* @vite-ignore */ url)
}
