import './smallHeap'
import { intake } from './intakeCommand'

// A reader that stops early (`| head`) is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 2))
process.exitCode = await intake(process.argv.slice(2), {
  input: process.stdin,
  out: (text) =>
    new Promise((done) => {
      if (process.stdout.write(text)) done()
      else process.stdout.once('drain', done)
    }),
  complain: (text) => process.stderr.write(`${text}\n`),
})
