// Bundles the command line into dist/cli/. Split, so that a command loads only its own task.
import { readdir, rm } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { build } from 'esbuild'

const root = join(import.meta.dirname, '..')
const outdir = join(root, 'dist/cli')

const { metafile } = await build({
  absWorkingDir: root,
  entryPoints: ['src/cli/loomwright.ts'],
  outdir,
  bundle: true,
  splitting: true,
  chunkNames: '[name]-[hash]',
  format: 'esm',
  platform: 'node',
  target: 'node20',
  jsx: 'automatic',
  // Libraries in the older module form ask for Node's own modules by `require`.
  banner: { js: 'import { createRequire as $require } from "node:module"; const require = $require(import.meta.url);' },
  metafile: true,
  logLevel: 'warning',
})

await removeStaleFiles(new Set(Object.keys(metafile.outputs).map((path) => basename(path))))

/** Removed after the new files are written, so that a command started a moment ago still finds its own. */
async function removeStaleFiles(current: ReadonlySet<string>): Promise<void> {
  for (const name of await readdir(outdir)) {
    if (!current.has(name)) await rm(join(outdir, name), { recursive: true, force: true })
  }
}
