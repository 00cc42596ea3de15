import { existsSync } from 'node:fs'
import { mkdir, mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { delimiter, dirname, join } from 'node:path'

/** A browser that the tests can start: its program, and the environment it needs besides the usual one. */
export interface Browser {
  readonly path: string
  readonly env: Readonly<Record<string, string>>
}

/**
 * The browser for the tests: the one named by LOOMWRIGHT_BROWSER, else on Linux x64 the Chromium that npm installed,
 * else a Chrome or Chromium of this computer. Undefined where there is none.
 */
export async function findBrowser(): Promise<Browser | undefined> {
  const named = process.env.LOOMWRIGHT_BROWSER
  if (named) return { path: named, env: {} }
  if (process.platform === 'linux' && process.arch === 'x64') return unpackChromium()
  const path = usualPaths().find((candidate) => existsSync(candidate))
  return path === undefined ? undefined : { path, env: {} }
}

/** Unpacks the packaged Chromium beside the other caches in node_modules, once a version. */
async function unpackChromium(): Promise<Browser> {
  const require = createRequire(import.meta.url)
  const manifest = join(dirname(require.resolve('@sparticuz/chromium')), '../../package.json')
  const { version } = JSON.parse(await readFile(manifest, 'utf8')) as { version: string }
  const cache = join(import.meta.dirname, '../../node_modules/.cache')
  const home = join(cache, `chromium-${version}`)
  if (!existsSync(home)) {
    await mkdir(cache, { recursive: true })
    await unpackInto(home, await mkdtemp(join(cache, 'unpacking-')))
  }
  return {
    path: join(home, 'chromium'),
    env: { LD_LIBRARY_PATH: join(home, 'al2023/lib'), FONTCONFIG_PATH: join(home, 'fonts') },
  }
}

/** Unpacks in a folder of its own and renames it when complete, so that two runs at once cannot meet half a browser. */
async function unpackInto(home: string, unpacking: string): Promise<void> {
  const before = { ...process.env }
  // The package unpacks into the temporary folder, and its system libraries only where it believes they are missing.
  process.env.TMPDIR = unpacking
  process.env.AWS_EXECUTION_ENV ??= 'AWS_Lambda_nodejs20.x'
  try {
    const { default: chromium } = await import('@sparticuz/chromium')
    await chromium.executablePath()
    await writeFile(join(unpacking, 'fonts/fonts.conf'), fontsConf(home))
    await rename(unpacking, home)
  } catch (error) {
    await rm(unpacking, { recursive: true, force: true })
    if (!existsSync(home)) throw error
  } finally {
    process.env = before
  }
}

function fontsConf(home: string): string {
  const dir = join(home, 'fonts')
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${dir}</dir><cachedir>${join(dir, 'cache')}</cachedir></fontconfig>
`
}

function usualPaths(): string[] {
  switch (process.platform) {
    case 'darwin':
      return ['Google Chrome', 'Chromium'].map((name) => `/Applications/${name}.app/Contents/MacOS/${name}`)
    case 'win32':
      return [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA]
        .filter((folder) => folder !== undefined)
        .map((folder) => join(folder, 'Google/Chrome/Application/chrome.exe'))
    default:
      return (process.env.PATH ?? '')
        .split(delimiter)
        .flatMap((folder) => ['chromium', 'chromium-browser', 'google-chrome'].map((name) => join(folder, name)))
  }
}
