import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { serve as startServer, type Serving } from '../../server/index.ts'
import type { Out } from '../out.ts'
import { ArgumentError } from '../read-arguments.ts'
import { readText } from '../read-file.ts'

const PORT = 4747
// From dist/cli/: the page is beside it, the demo vehicle in the package.
const PAGE = fileURLToPath(new URL('../page', import.meta.url))
const DEMO = fileURLToPath(new URL('../../examples/vehicles/tessarby-errand.json', import.meta.url))

/** Serves the live page on this machine until it is stopped; prints the address to open. */
export async function serve(args: readonly string[], out: Out): Promise<number> {
  const { files, port } = readServeArguments(args)
  for (const file of files) readText(file)
  const serving = await listenNear(files, port)
  out.print(`Loomwright is at ${serving.url} — open it in a browser on this machine. Ctrl+C stops it.`)
  await new Promise<void>((stop) => { for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => { stop() }) })
  await serving.close()
  return 0
}

function readServeArguments(args: readonly string[]): { files: string[]; port: number } {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options: { port: { type: 'string' } }, allowPositionals: true })
    const port = Number(values.port ?? PORT)
    if (!Number.isInteger(port) || port < 0 || port > 65535) throw new ArgumentError(`--port takes a number from 0 to 65535, not "${values.port ?? ''}"`)
    return { files: positionals.length ? positionals : [DEMO], port }
  } catch (error) {
    if (!(error instanceof TypeError)) throw error
    throw new ArgumentError(error.message.split('. ')[0], ['--port'])
  }
}

/** Where the port is taken, any free one. */
async function listenNear(files: readonly string[], port: number): Promise<Serving> {
  try {
    return await startServer({ files, port, page: PAGE })
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE') throw error
    return startServer({ files, port: 0, page: PAGE })
  }
}
