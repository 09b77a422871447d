import { cpSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import { tmpdir } from 'node:os'
import { extname, join, normalize } from 'node:path'

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
}

/** A copy of the built page on a server of its own, which can be changed as by a new version, and switched off. */
export interface Site {
  readonly address: string
  /** paths that were asked for since the last call */
  asked(): string[]
  /** puts another version of the page there, told apart by what `<html data-version>` says */
  publish(version: string): void
  /** from now on nothing is answered */
  unplug(): void
  close(): Promise<void>
}

export async function serveCopy(): Promise<Site> {
  const folder = mkdtempSync(join(tmpdir(), 'basinbook-site-'))
  cpSync('dist/app', folder, { recursive: true })
  let asked: string[] = []
  let plugged = true
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost')
    asked.push(pathname)
    if (!plugged) return void request.socket.destroy()
    const path = join(folder, normalize(pathname === '/' ? '/index.html' : pathname))
    const found = path.startsWith(folder) && statSync(path, { throwIfNoEntry: false })?.isFile()
    if (!found) return void response.writeHead(404).end()
    response.writeHead(200, { 'content-type': TYPES[extname(path)] ?? 'text/plain', 'cache-control': 'no-cache' })
    response.end(readFileSync(path))
  })
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  const port = (server.address() as { port: number }).port
  return {
    address: `http://127.0.0.1:${port}/`,
    asked() {
      const since = asked
      asked = []
      return since
    },
    publish(version) {
      const page = join(folder, 'index.html')
      writeFileSync(
        page,
        readFileSync(page, 'utf8').replace(/<html[^>]*>/, `<html lang="en" data-version="${version}">`),
      )
      const worker = join(folder, 'sw.js')
      const revised = readFileSync(worker, 'utf8').replace(
        /url:"index\.html",revision:"[^"]*"/,
        `url:"index.html",revision:"${version}"`,
      )
      writeFileSync(worker, revised)
    },
    unplug() {
      plugged = false
    },
    async close() {
      server.closeAllConnections()
      await new Promise((done) => server.close(done))
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
