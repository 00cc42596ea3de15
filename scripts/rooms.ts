// Checks that imports in src/ keep to the room table of ARCHITECTURE.md: `npm run rooms`.
import { readFileSync } from 'node:fs'
import { readdir, readFile } from 'node:fs/promises'
import { join, posix, relative, sep } from 'node:path'
import { pathToFileURL } from 'node:url'
import ts from 'typescript'

/** For each room, in the order of the table, the rooms it may import. */
export type RoomTable = ReadonlyMap<string, readonly string[]>

/** Source texts by path, such as `src/math/sparse.ts`. */
export type SourceFiles = ReadonlyMap<string, string>

export interface Violation {
  readonly kind: 'table' | 'no-room' | 'not-allowed' | 'not-by-index' | 'own-index' | 'main' | 'outside' | 'missing' | 'cycle'
  readonly file: string
  /** The import as written; for a cycle, the files around it. */
  readonly import: string
  readonly remedy: string
}

interface Link {
  readonly from: string
  readonly written: string
  /** The file it means, or undefined if there is none. */
  readonly to: string | undefined
}

const mainFile = 'src/main.ts'

/** Everything in `files` that the table forbids, by file; empty when all is well. Imports of types count. */
export function findRoomViolations(table: RoomTable, files: SourceFiles): Violation[] {
  const paths = [...files.keys()].sort()
  const links = paths.flatMap((path) => readLinks(path, files))
  return [
    ...checkTable(table),
    ...paths.flatMap((path) => checkPlace(path, table)),
    ...links.flatMap((link) => checkLink(link, table)),
    ...findCycles(paths, links),
  ]
}

/** Reads the rows of `| Room | Holds | May import |`; throws a RangeError if the text has no such table. */
export function readRoomTable(markdown: string): RoomTable {
  const lines = markdown.split('\n')
  const head = lines.findIndex((line) => /^\|\s*Room\s*\|\s*Holds\s*\|\s*May import\s*\|/.test(line))
  if (head < 0) throw new RangeError('expected a table | Room | Holds | May import |, found none')
  const table = new Map<string, string[]>()
  for (const line of lines.slice(head + 2)) {
    if (!line.startsWith('|')) break
    const [room, , mayImport] = line.slice(1).split('|').map((cell) => cell.trim())
    const above = [...table.keys()]
    const listed = mayImport.split(/[,\s]+/).filter((word) => word !== '')
    table.set(room.replaceAll('`', ''), mayImport === 'all of the above' ? above : listed)
  }
  return table
}

// --- the imports of one file ---

function readLinks(from: string, files: SourceFiles): Link[] {
  const { importedFiles } = ts.preProcessFile(files.get(from) ?? '', true, true)
  return importedFiles
    .map(({ fileName }) => fileName)
    .filter((written) => written.startsWith('.'))
    .map((written) => ({ from, written, to: resolveImport(from, written, files) }))
}

/** Files that are not source (`../../package.json`, `./page.css`, `./x.ts?worker`) resolve to their path without a query. */
function resolveImport(from: string, written: string, files: SourceFiles): string | undefined {
  const path = posix.join(posix.dirname(from), written.split('?')[0])
  const isSource = /\.[cm]?[jt]sx?$/.test(path) || posix.extname(path) === ''
  if (!isSource || !path.startsWith('src/')) return path
  return [path, `${path}.ts`, `${path}.tsx`, `${path}/index.ts`].find((candidate) => files.has(candidate))
}

// --- the rules ---

function checkTable(table: RoomTable): Violation[] {
  const rooms = [...table.keys()]
  return rooms.flatMap((room, row) =>
    (table.get(room) ?? [])
      .filter((listed) => !rooms.slice(0, row).includes(listed))
      .map((listed): Violation => ({
        kind: 'table',
        file: 'ARCHITECTURE.md',
        import: `${room} may import ${listed}`,
        remedy: rooms.includes(listed) ? `a row lists only rooms above it; move what ${room} needs lower` : `there is no row ${listed}`,
      })),
  )
}

function checkPlace(path: string, table: RoomTable): Violation[] {
  if (path === mainFile || table.has(roomOf(path))) return []
  const remedy = `move it into a room of the table, or add a row for ${roomOf(path) || 'it'}`
  return [{ kind: 'no-room', file: path, import: '', remedy }]
}

function checkLink(link: Link, table: RoomTable): Violation[] {
  const broken = judgeLink(link, table)
  return broken ? [{ ...broken, file: link.from, import: link.written }] : []
}

function judgeLink({ from, to }: Link, table: RoomTable): Pick<Violation, 'kind' | 'remedy'> | undefined {
  if (to === undefined) return { kind: 'missing', remedy: 'no such file; write the path as it is, ending .ts or .tsx' }
  if (!to.startsWith('src/')) return judgeOutside(from, to)
  const own = roomOf(from)
  const other = roomOf(to)
  const index = `src/${other}/index.ts`
  if (from === mainFile || !table.has(own)) return undefined
  if (to === mainFile) return { kind: 'main', remedy: 'import the room that holds it; main.ts is for users of the package' }
  if (own === other) {
    return to === index ? { kind: 'own-index', remedy: 'import the file that holds it, not the index of its own room' } : undefined
  }
  if (!table.get(own)?.includes(other)) {
    return {
      kind: 'not-allowed',
      remedy: `${own} may import ${table.get(own)?.join(', ') || 'no room'}; move what both need to a lower room, or add ${other} to the row of ${own}`,
    }
  }
  if (to !== index) return { kind: 'not-by-index', remedy: `name it in ${index} and import that` }
  return undefined
}

/** Tests may use the builders in test/, and any file a data file such as package.json. */
function judgeOutside(from: string, to: string): Pick<Violation, 'kind' | 'remedy'> | undefined {
  const isTest = /\.test\.tsx?$/.test(from)
  if (to.endsWith('.json') || (isTest && to.startsWith('test/'))) return undefined
  return { kind: 'outside', remedy: 'source imports only source; move what it needs into a room' }
}

/** The folder under src/ that a path lies in, or '' for a file directly in src/. */
function roomOf(path: string): string {
  const [, room, ...rest] = path.split('/')
  return rest.length === 0 ? '' : room
}

// --- cycles ---

/** One cycle for each knot of files that import each other: the shortest one through its first file. */
function findCycles(paths: readonly string[], links: readonly Link[]): Violation[] {
  const next = new Map(paths.map((path) => [path, new Set<string>()]))
  for (const { from, to } of links) if (to !== undefined && next.has(to)) next.get(from)?.add(to)
  const seen = new Set<string>()
  const cycles: Violation[] = []
  for (const path of paths) {
    const cycle = seen.has(path) ? undefined : shortestCycle(path, next)
    if (!cycle) continue
    for (const file of cycle) seen.add(file)
    const remedy = 'move what they share into a file of its own that imports neither'
    cycles.push({ kind: 'cycle', file: path, import: [...cycle, path].join(' -> '), remedy })
  }
  return cycles
}

/** The files of a shortest way from `start` back to itself, by breadth first. */
function shortestCycle(start: string, next: ReadonlyMap<string, ReadonlySet<string>>): string[] | undefined {
  const cameFrom = new Map<string, string>()
  const queue = [start]
  for (const file of queue) {
    for (const to of next.get(file) ?? []) {
      if (to === start) return walkBack(file, cameFrom)
      if (cameFrom.has(to)) continue
      cameFrom.set(to, file)
      queue.push(to)
    }
  }
  return undefined
}

function walkBack(last: string, cameFrom: ReadonlyMap<string, string>): string[] {
  const way: string[] = []
  for (let file: string | undefined = last; file !== undefined; file = cameFrom.get(file)) way.unshift(file)
  return way
}

// --- the command ---

async function readSource(root: string): Promise<SourceFiles> {
  const entries = await readdir(join(root, 'src'), { recursive: true, withFileTypes: true })
  const paths = entries
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
  const texts = await Promise.all(paths.map((path) => readFile(path, 'utf8')))
  return new Map(paths.map((path, i) => [relative(root, path).replaceAll(sep, '/'), texts[i]]))
}

async function main(): Promise<void> {
  const root = join(import.meta.dirname, '..')
  const table = readRoomTable(readFileSync(join(root, 'ARCHITECTURE.md'), 'utf8'))
  const files = await readSource(root)
  const violations = findRoomViolations(table, files)
  for (const { kind, file, import: written, remedy } of violations) {
    console.log(`${file}\n  ${kind}: ${written}\n  remedy: ${remedy}\n`)
  }
  console.log(`${files.size} files, ${violations.length} violations of the room table`)
  if (violations.length > 0) process.exitCode = 1
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await main()
