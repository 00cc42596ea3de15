import { existsSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import type { AddressInfo } from 'node:net'
import { basename, extname, join, normalize, sep } from 'node:path'
import { serve as listen, type ServerType } from '@hono/node-server'
import { Hono, type Context } from 'hono'
import { RECORDS_PATH, type RecordList } from '../api/index.ts'

export interface ServeOptions {
  /** Record files, each offered under its name without folder and ending. */
  readonly files: readonly string[]
  /** 0 takes any free port. */
  readonly port: number
  /** Folder of the built page; the one built beside this program when absent. */
  readonly page?: string
}

export interface Serving { readonly url: string; close(): Promise<void> }

const HOST = '127.0.0.1'

/** Serves the page and the records to this machine alone; answers once it listens, and fails where the port is taken. */
export async function serve(options: ServeOptions): Promise<Serving> {
  const app = makeApp(options)
  const server = await new Promise<ServerType>((resolve, reject) => {
    const starting = listen({ fetch: app.fetch, port: options.port, hostname: HOST }, () => { resolve(starting) })
    starting.once('error', reject)
  })
  const { port } = server.address() as AddressInfo
  return {
    url: `http://${HOST}:${port}/`,
    close: () => new Promise((done) => { server.close(() => { done() }) }),
  }
}

/** Beside the bundled command line, or in the build folder when run from the sources. */
function findPage(): string {
  const beside = join(import.meta.dirname, '../page')
  return existsSync(beside) ? beside : join(import.meta.dirname, '../../dist/page')
}

function makeApp({ files, page = findPage() }: ServeOptions): Hono {
  const byName = nameFiles(files)
  const app = new Hono()
  app.use(onlyThisMachine)
  app.get(RECORDS_PATH, (c) => c.json({ records: [...byName.keys()] } satisfies RecordList))
  app.get(`${RECORDS_PATH}/:name`, async (c) => {
    const file = byName.get(c.req.param('name'))
    const text = file === undefined ? null : await readIfThere(file)
    return text === null ? c.text('there is no such record', 404) : c.body(text, 200, { 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store' })
  })
  app.get('*', (c) => sendFile(c, page))
  app.all('*', (c) => c.text('there is nothing to do here but to read', 405, { allow: 'GET, HEAD' }))
  return app
}

/** Names without folder and ending; of two files of one name the second is told apart by a number. */
function nameFiles(files: readonly string[]): Map<string, string> {
  const byName = new Map<string, string>()
  for (const file of files) {
    const plain = basename(file, extname(file))
    let name = plain
    for (let n = 2; byName.has(name); n++) name = `${plain}-${n}`
    byName.set(name, file)
  }
  return byName
}

/** A page of another site must not read records by a name that it lets point here. */
async function onlyThisMachine(c: Context, next: () => Promise<void>): Promise<Response | undefined> {
  const host = (c.req.header('host') ?? '').replace(/:\d+$/, '')
  if (host !== HOST && host !== 'localhost') return c.text('only for this machine', 403)
  await next()
  return undefined
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml', '.woff2': 'font/woff2', '.woff': 'font/woff', '.json': 'application/json; charset=utf-8',
}

/** The page loads nothing from elsewhere, whatever a record says. */
const POLICY = "default-src 'self'; img-src 'self' data:; font-src 'self' data:; style-src 'self' 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"

async function sendFile(c: Context, page: string): Promise<Response> {
  const asked = c.req.path === '/' ? 'index.html' : c.req.path.slice(1)
  const file = normalize(join(page, asked))
  const type = types[extname(file)]
  const bytes = file.startsWith(page.endsWith(sep) ? page : page + sep) && type !== undefined ? await readIfThere(file) : null
  if (bytes === null || type === undefined) return c.text('there is nothing here', 404)
  const kept = asked.startsWith('assets/') ? 'public, max-age=31536000, immutable' : 'no-cache'
  return c.body(bytes, 200, { 'content-type': type, 'cache-control': kept, 'x-content-type-options': 'nosniff', 'content-security-policy': POLICY })
}

/** What a path may be beside that of a file that can be read: nothing, a folder, too long, forbidden, or with a zero byte in it. */
const NOT_THERE = ['ENOENT', 'EISDIR', 'ENOTDIR', 'ENAMETOOLONG', 'ELOOP', 'EACCES', 'EPERM', 'ERR_INVALID_ARG_VALUE']

async function readIfThere(file: string): Promise<Uint8Array<ArrayBuffer> | null> {
  try {
    return new Uint8Array(await readFile(file))
  } catch (error) {
    if (NOT_THERE.includes(String((error as NodeJS.ErrnoException).code))) return null
    throw error
  }
}
