// Bundles the library into dist/lib/ and the command line into dist/cli/. The latter is split, so that a command loads only its own task.
import { readdir, rm } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { build } from 'esbuild'

const root = join(import.meta.dirname, '..')
const outdir = join(root, 'dist/cli')

const common = { absWorkingDir: root, bundle: true, format: 'esm', platform: 'node', target: 'node20', logLevel: 'warning' } as const

/** What `import … from 'loomwright'` gives; the libraries it stands on are installed beside it. */
await build({ ...common, entryPoints: ['src/main.ts'], outdir: join(root, 'dist/lib'), packages: 'external' })

const { metafile } = await build({
  ...common,
  entryPoints: ['src/cli/loomwright.ts'],
  outdir,
  splitting: true,
  chunkNames: '[name]-[hash]',
  jsx: 'automatic',
  // Libraries in the older module form ask for Node's own modules by `require`.
  banner: { js: 'import { createRequire as $require } from "node:module"; const require = $require(import.meta.url);' },
  metafile: true,
})

await removeStaleFiles(new Set(Object.keys(metafile.outputs).map((path) => basename(path))))

/** Removed after the new files are written, so that a command started a moment ago still finds its own. */
async function removeStaleFiles(current: ReadonlySet<string>): Promise<void> {
  for (const name of await readdir(outdir)) {
    if (!current.has(name)) await rm(join(outdir, name), { recursive: true, force: true })
  }
}
