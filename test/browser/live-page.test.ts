import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { build } from 'vite'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { serve, type Serving } from '../../src/server/index.ts'
import { textWidth } from '../../src/draw/text-widths.ts'
import { openLive, solveLive } from '../../src/tasks/live-vehicle.ts'
import type { WiringRecord } from '../../src/record/index.ts'
import { makeLampAndSwitch, makeRelayAndAlternator, makeSharedEarth } from '../builders/small-records.ts'
import { makeTessarby } from '../builders/tessarby.ts'
import { launchBrowser } from './launch.ts'

const root = join(import.meta.dirname, '../..')
const pictures = join(root, 'test-results/pictures')
const demo = join(root, 'examples/vehicles/tessarby-errand.json')
const desk = { width: 1440, height: 900 }
const phone = { width: 390, height: 844 }

const records: Readonly<Record<string, WiringRecord>> = {
  'lamp-and-switch': makeLampAndSwitch(), 'shared-earth': makeSharedEarth(), 'relay-and-alternator': makeRelayAndAlternator(), 'test-van': makeTessarby(),
}

/** Records of the tests in test/records, none of which has a layout. */
const proven = ['a-parking-lamp-switch', 'c-self-parking-wiper', 'd-hot-wire-flasher', 'f-control-box', 'g-alternator-warning-lamp']

let browser: Browser
let serving: Serving
let folder: string

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'live-page-'))
  await mkdir(pictures, { recursive: true })
  const files = await Promise.all(Object.entries(records).map(async ([name, record]) => {
    const file = join(folder, `${name}.json`)
    await writeFile(file, JSON.stringify(record))
    return file
  }))
  await writeFile(join(folder, 'damaged.json'), JSON.stringify({ ...records['lamp-and-switch'], parts: { lamp: { kind: 'lmap', title: 'Lamp' } } }))
  await build({ root: join(root, 'src/web'), configFile: join(root, 'vite.config.ts'), logLevel: 'error', build: { outDir: join(folder, 'page'), emptyOutDir: true } })
  const provenFiles = proven.map((name) => join(root, `test/records/${name}.json`))
  serving = await serve({ files: [demo, ...files, ...provenFiles, join(folder, 'damaged.json')], port: 0, page: join(folder, 'page') })
  browser = await launchBrowser()
})

afterAll(async () => {
  await browser.close()
  await serving.close()
  await rm(folder, { recursive: true })
})

/** A page with the record open and drawn. */
async function openPage(name: string, options: BrowserContextOptions = {}): Promise<Page> {
  const context = await browser.newContext({ viewport: desk, ...options })
  const page = await context.newPage()
  page.on('pageerror', (error) => { throw error })
  await page.goto(`${serving.url}?record=${name}`)
  await page.waitForSelector('g[data-kind="part"]')
  await page.evaluate(() => document.fonts.ready)
  return page
}

const step = (page: Page, axis: string, position: string) => page.locator(`input[name="${axis}"][value="${position}"]`)
const choice = (page: Page, said: string) => page.locator('.steps label').filter({ hasText: new RegExp(`^${said}$`) })
const words = (page: Page, kind: string, id: string) => page.locator(`g[data-kind="${kind}"][data-id="${id}"]`).evaluate((group) => [...group.querySelectorAll('text')].map((one) => one.textContent).join(' '))

test('the demo vehicle opens with its controls and no error', async () => {
  const page = await openPage('tessarby-errand')
  expect(await page.textContent('h1')).toContain('Tessarby Errand')
  expect(await page.locator('.control').count()).toBeGreaterThan(5)
  await page.screenshot({ path: join(pictures, 'demo-desk.png') })
  await page.context().close()
})

test('a control moved by the mouse lights the lamp', async () => {
  const page = await openPage('lamp-and-switch')
  expect(await words(page, 'part', 'lamp')).toContain('off')
  await choice(page, 'on').click()
  await expect.poll(() => words(page, 'part', 'lamp')).toMatch(/10\d %/)
  await page.context().close()
})

test('a control moved by touch lights the lamp', async () => {
  const page = await openPage('lamp-and-switch', { viewport: phone, hasTouch: true, isMobile: true })
  await choice(page, 'on').tap()
  await expect.poll(() => words(page, 'part', 'lamp')).toMatch(/10\d %/)
  await page.context().close()
})

test('a control moved by the arrow keys lights the lamp', async () => {
  const page = await openPage('lamp-and-switch')
  await step(page, 'switch.lever', 'off').focus()
  await page.keyboard.press('ArrowRight')
  await expect.poll(() => words(page, 'part', 'lamp')).toMatch(/10\d %/)
  expect(await page.textContent('[aria-live]')).toMatch(/^Lit: Lamp/)
  await page.context().close()
})

test('a clicked wire shows the amps that the engine gives', async () => {
  const page = await openPage('lamp-and-switch')
  await choice(page, 'on').click()
  await expect.poll(() => words(page, 'part', 'lamp')).toMatch(/10\d %/)
  await clickMiddle(page, 'w2')
  const opened = openLive(JSON.stringify(records['lamp-and-switch']), null, { width: 800, height: 600 })
  if (!opened.ok) throw new Error(opened.said)
  const { solved } = solveLive(opened.live, { controls: { 'switch.lever': 'on' }, engine: 'stopped', battery: 'full', phases: {} })
  await page.waitForSelector('.fact-title')
  expect(await page.textContent('.fact-title')).toBe('red with white, 1.0 mm²')
  expect(await page.textContent('.facts dl')).toContain(`Current${solved.wires.w2.amps!.toFixed(2)} A`)
  await page.context().close()
})

/** Clicks the wire at the middle of its line. */
async function clickMiddle(page: Page, id: string): Promise<void> {
  const spot = await page.locator(`g[data-kind="wire"][data-id="${id}"] .reach`).evaluate((line) => {
    const path = line as SVGPolylineElement
    const { x, y } = path.getPointAtLength(path.getTotalLength() / 2).matrixTransform(path.getScreenCTM()!)
    return { x, y }
  })
  await page.mouse.click(spot.x, spot.y)
}

test.each([...Object.keys(records), ...proven])('%s opens without layout, and no lettering touches another', async (name) => {
  const page = await openPage(name)
  expect(await touchingTexts(page)).toEqual([])
  await page.screenshot({ path: join(pictures, `${name}-desk.png`) })
  await page.context().close()
})

test('every control of a record is there, and its editions to choose', async () => {
  for (const name of proven) {
    const page = await openPage(name)
    const record = JSON.parse(await readFile(join(root, `test/records/${name}.json`), 'utf8')) as WiringRecord
    expect(record.layout).toBeUndefined()
    const editions = await page.locator('header select option').allTextContents()
    expect(editions.length).toBeGreaterThan(1)
    const axes = new Set(await page.locator('.control input[type=radio]').evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).name)))
    for (const [id, part] of Object.entries(record.parts)) {
      for (const axis of Object.keys((part.params as { axes?: object } | undefined)?.axes ?? {})) expect(axes).toContain(`${id}.${axis}`)
    }
    await page.context().close()
  }
})

/** Pairs of texts of the drawing whose boxes on the screen overlap, by the browser's own measure. */
function touchingTexts(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const boxes = [...document.querySelectorAll('.sheet text')].map((text) => ({ said: text.textContent, box: text.getBoundingClientRect() }))
    // A box holds the room for accents and tails as well: a fifth of it above and below is empty.
    const inset = (box: DOMRect) => box.width > box.height ? { x0: box.x, x1: box.right, y0: box.y + box.height * 0.2, y1: box.bottom - box.height * 0.15 } : { x0: box.x + box.width * 0.2, x1: box.right - box.width * 0.15, y0: box.y, y1: box.bottom }
    const areas = boxes.map(({ said, box }) => ({ said, ...inset(box) }))
    return areas.flatMap((a, i) => areas.slice(0, i).filter((b) => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1).map((b) => `${a.said} / ${b.said}`))
  })
}

test('lettering is never read below 12 px', async () => {
  for (const viewport of [desk, phone]) {
    const page = await openPage('tessarby-errand', { viewport })
    const least = await page.evaluate(() => {
      const svg = document.querySelector<SVGSVGElement>('.sheet svg')!
      const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width
      return Math.min(...[...svg.querySelectorAll('text')].map((text) => Number(text.getAttribute('font-size')) * scale))
    })
    expect(least).toBeGreaterThanOrEqual(11.99)
    await page.context().close()
  }
})

test('the browser sets the lettering as wide as the layout reckoned', async () => {
  const page = await openPage('tessarby-errand')
  const set = await page.evaluate(() => [...document.querySelectorAll<SVGTextElement>('.sheet text[font-size="12"]')].map((text) => ({
    said: text.textContent, weight: text.getAttribute('font-weight') === '600' ? 600 as const : 400 as const, width: text.getComputedTextLength(),
  })))
  expect(set.filter(({ said, weight, width }) => width > textWidth(said, 12, weight) + 1)).toEqual([])
  await page.context().close()
})

test('the drawing comes first on a phone, and nothing scrolls sideways', async () => {
  const page = await openPage('tessarby-errand', { viewport: phone, hasTouch: true, isMobile: true })
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phone.width)
  const [drawing, controls] = await Promise.all(['.drawing', '.controls'].map((part) => page.locator(part).boundingBox()))
  expect(drawing!.y).toBeLessThan(controls!.y)
  expect(drawing!.height).toBeGreaterThan(phone.height * 0.4)
  expect(controls!.y + controls!.height).toBeLessThanOrEqual(phone.height + 1)
  await page.screenshot({ path: join(pictures, 'demo-phone.png') })
  await page.context().close()
})

test('a circuit can be drawn alone, and found wires bring the whole back', async () => {
  const page = await openPage('test-van')
  const wires = () => page.locator('g[data-kind="wire"]').count()
  const all = await wires()
  await page.selectOption('select[aria-label="Draw"]', 'Turn stalk')
  await expect.poll(wires).toBeLessThan(all)
  await page.selectOption('select[aria-label="Find"]', 'wire 18')
  await expect.poll(wires).toBe(all)
  expect(await page.locator('g.picked').getAttribute('data-id')).toBe('18')
  await page.context().close()
})

test('every movement reaches the drawing', async () => {
  const page = await openPage('tessarby-errand')
  const inputs = page.locator('.control input[type="radio"]:not(:checked)')
  for (let i = 0; i < 5; i++) {
    const before = await page.evaluate(() => performance.getEntriesByName('control to drawing').length)
    await inputs.nth(i).evaluate((input) => { (input as HTMLInputElement).click() })
    await expect.poll(() => page.evaluate(() => performance.getEntriesByName('control to drawing').length)).toBeGreaterThan(before)
  }
  await page.context().close()
})

test('a damaged record is told of line by line with its paths', async () => {
  const page = await (await browser.newContext({ viewport: phone })).newPage()
  await page.goto(`${serving.url}?record=damaged`)
  await page.waitForSelector('.refusal li')
  expect(await page.textContent('.refusal')).toContain('parts.lamp')
  await page.context().close()
})

test.each(['day', 'night'] as const)('by %s axe finds nothing serious', async (look) => {
  for (const viewport of [desk, phone]) {
    const page = await openPage('tessarby-errand', { viewport, colorScheme: look === 'night' ? 'dark' : 'light' })
    await page.selectOption('select[aria-label="Find"]', { index: 1 })
    await page.waitForSelector('.fact-title')
    expect(await page.evaluate(() => document.documentElement.dataset.look)).toBe(look)
    const { violations } = await new AxeBuilder({ page }).analyze()
    expect(violations.filter(({ impact }) => impact === 'serious' || impact === 'critical').map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' ')}`)).toEqual([])
    await page.screenshot({ path: join(pictures, `demo-${look}-${viewport.width}.png`) })
    await page.context().close()
  }
})
