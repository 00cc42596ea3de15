import { mkdir, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core'
import { build } from 'vite'
import { serve, type Serving } from '../../src/server/index.ts'
import { launchBrowser } from './launch.ts'

export const root = join(import.meta.dirname, '../..')
/** Where the tests leave pictures for people to look at. */
export const pictures = join(root, 'test-results/pictures')
export const desk = { width: 1440, height: 900 }
export const phone = { width: 390, height: 844 }
export const touch: BrowserContextOptions = { viewport: phone, hasTouch: true, isMobile: true }

/** The page, built and served with some records, and a browser to see it with. */
export interface ServedPage {
  readonly browser: Browser
  readonly serving: Serving
  /** A page with the record open and drawn. */
  open(name: string, options?: BrowserContextOptions, hash?: string): Promise<Page>
  close(): Promise<void>
}

/** `write` puts records into a folder of their own and answers all files to be served. */
export async function servePage(write: (folder: string) => Promise<readonly string[]>): Promise<ServedPage> {
  const folder = await mkdtemp(join(tmpdir(), 'live-page-'))
  await mkdir(pictures, { recursive: true })
  const files = await write(folder)
  await build({ root: join(root, 'src/web'), configFile: join(root, 'vite.config.ts'), logLevel: 'error', build: { outDir: join(folder, 'page'), emptyOutDir: true } })
  const serving = await serve({ files, port: 0, page: join(folder, 'page') })
  const browser = await launchBrowser()
  return {
    browser, serving,
    async open(name, options = {}, hash = '') {
      const context = await browser.newContext({ viewport: desk, ...options })
      const page = await context.newPage()
      page.on('pageerror', (error) => { throw error })
      await page.goto(`${serving.url}?record=${name}${hash}`)
      await page.waitForSelector('g[data-kind="part"]')
      await page.evaluate(() => document.fonts.ready)
      return page
    },
    async close() {
      await browser.close()
      await serving.close()
      await rm(folder, { recursive: true })
    },
  }
}

/** The button of one position of a control. */
export function step(page: Page, axis: string, position: string): Locator {
  return page.locator(`input[name="${axis}"][value="${position}"]`)
}

/** Types into the field and takes what is listed. */
export async function find(page: Page, kind: string, id: string, said = id): Promise<void> {
  await page.getByRole('combobox', { name: 'Find' }).fill(said)
  await page.locator(`[data-found="${kind} ${id}"]`).click()
}
