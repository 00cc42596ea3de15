import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { serve as startServer, type Serving } from '../../server/index.ts'
import { loadTask } from '../../tasks/index.ts'
import { showRefusal } from '../open-file.ts'
import type { Out } from '../out.ts'
import { ArgumentError } from '../read-arguments.ts'
import { readText } from '../read-file.ts'

const PORT = 4747
// From dist/cli/: the page is beside it, the demo vehicle in the package.
const PAGE = fileURLToPath(new URL('../page', import.meta.url))
const DEMOS = ['tessarby-errand', 'ullenscombe-warden'].map((name) => fileURLToPath(new URL(`../../examples/vehicles/${name}.json`, import.meta.url)))

/** Serves the live page on this machine until it is stopped; prints the address to open, and what is wrong with a record that it will refuse. */
export async function serve(args: readonly string[], out: Out): Promise<number> {
  const { files, port } = readServeArguments(args)
  const refusals = await listRefusals(files)
  const serving = await listenNear(files, port, out)
  out.print(`Loomwright is at ${serving.url} — open it in a browser on this machine. Ctrl+C stops it.`)
  for (const refusal of refusals) out.complain(refusal)
  await new Promise<void>((stop) => { for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => { stop() }) })
  await serving.close()
  return 0
}

function readServeArguments(args: readonly string[]): { files: string[]; port: number } {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options: { port: { type: 'string' } }, allowPositionals: true })
    const port = Number(values.port ?? PORT)
    if (!Number.isInteger(port) || port < 0 || port > 65535) throw new ArgumentError(`--port takes a number from 0 to 65535, not "${values.port ?? ''}"`)
    return { files: positionals.length ? positionals : DEMOS, port }
  } catch (error) {
    if (!(error instanceof TypeError)) throw error
    throw new ArgumentError(error.message.split('. ')[0], ['--port'])
  }
}

/** Problems of a record that are printed; the page shows them all. */
const SHOWN_PROBLEMS = 5

/** For each record that cannot be read, the first of what is wrong with it. */
async function listRefusals(files: readonly string[]): Promise<string[]> {
  const openVehicle = await loadTask.openVehicle()
  return files.flatMap((file) => {
    const opened = openVehicle(readText(file), () => ({}))
    if (opened.ok || opened.stage !== 'record') return []
    const [first, ...problems] = showRefusal(opened)
    const more = opened.count > SHOWN_PROBLEMS ? [`… and ${opened.count - SHOWN_PROBLEMS} more: the page shows them.`] : []
    return [[`${file}: ${first}`, ...problems.slice(0, SHOWN_PROBLEMS), ...more].join('\n')]
  })
}

/** Ports tried after the one asked for, before any free one is taken. */
const MORE_PORTS = 20

/** At the port, or where that is taken at the next free one, which is said. */
async function listenNear(files: readonly string[], asked: number, out: Out): Promise<Serving> {
  const ports = asked === 0 ? [0] : [...Array.from({ length: MORE_PORTS + 1 }, (_, i) => asked + i).filter((port) => port <= 65535), 0]
  for (const port of ports) {
    try {
      const serving = await startServer({ files, port, page: PAGE })
      if (port !== asked) out.print(`Port ${asked} is taken: ${new URL(serving.url).port} instead.`)
      return serving
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE') throw error
    }
  }
  throw new ArgumentError(`no port is free near ${asked}`)
}
