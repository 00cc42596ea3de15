import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Serving } from '../../src/server/index.ts'
import { textWidth } from '../../src/draw/text-widths.ts'
import { openLive, solveLive } from '../../src/tasks/live-vehicle.ts'
import type { WiringRecord } from '../../src/record/index.ts'
import { makeFuseBox, makeLampAndSwitch, makeRelayAndAlternator, makeSharedEarth, makeTwentyCircuits } from '../builders/small-records.ts'
import { makeTessarby } from '../builders/tessarby.ts'
import { desk, find, phone, pictures, root, servePage, step, touch, type ServedPage } from './served-page.ts'

const demo = join(root, 'examples/vehicles/tessarby-errand.json')

const records: Readonly<Record<string, WiringRecord>> = {
  'lamp-and-switch': makeLampAndSwitch(), 'shared-earth': makeSharedEarth(), 'fuse-box': makeFuseBox(), 'lost-earth': makeLostEarth(), 'twenty-circuits': makeTwentyCircuits(), 'relay-and-alternator': makeRelayAndAlternator(), 'test-van': makeTessarby(),
}

function makeLostEarth(): WiringRecord {
  const { wires: { w3: _, ...wires } = {}, ...record } = makeLampAndSwitch()
  return { ...record, wires }
}

/** Two lamps of one role from 1955 to 1959. */
function makeBrokenEdition(): WiringRecord {
  const record = makeLampAndSwitch()
  const { lamp } = record.parts
  const parts = { ...record.parts, lamp: { ...lamp, role: 'lamp' }, other: { ...lamp, role: 'lamp', fits: [{ years: { from: 1955, to: 1959 } }] } }
  return { ...record, parts }
}

/** Records of the tests in test/records, none of which has a layout. */
const proven = ['a-parking-lamp-switch', 'c-self-parking-wiper', 'd-hot-wire-flasher', 'f-control-box', 'g-alternator-warning-lamp']

let served: ServedPage
let browser: Browser
let serving: Serving
const openPage: ServedPage['open'] = (...asked) => served.open(...asked)

beforeAll(async () => {
  served = await servePage(async (folder) => {
    const write = async (name: string, record: unknown) => {
      const file = join(folder, `${name}.json`)
      await writeFile(file, JSON.stringify(record))
      return file
    }
    return [
      demo, ...await Promise.all(Object.entries(records).map(async ([name, record]) => write(name, record))), ...proven.map((name) => join(root, `test/records/${name}.json`)),
      await write('damaged', { ...records['lamp-and-switch'], parts: { lamp: { kind: 'lmap', title: 'Lamp' } } }), await write('one-broken-edition', makeBrokenEdition()),
    ]
  })
  ;({ browser, serving } = served)
})

afterAll(async () => { await served.close() })

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
  const page = await openPage('lamp-and-switch', touch)
  await choice(page, 'on').tap()
  await expect.poll(() => words(page, 'part', 'lamp')).toMatch(/10\d %/)
  await page.context().close()
})

test('a control moved by the arrow keys lights the lamp', async () => {
  const page = await openPage('lamp-and-switch')
  await step(page, 'switch.lever', 'off').focus()
  await page.keyboard.press('ArrowRight')
  await expect.poll(() => words(page, 'part', 'lamp')).toMatch(/10\d %/)
  expect(await page.textContent('.lit p')).toMatch(/^Lit, in per cent of rated volts: Lamp/)
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
  const page = await openPage('tessarby-errand', touch)
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
  await find(page, 'wire', '18')
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
    await find(page, 'part', 'battery')
    await page.waitForSelector('.fact-title')
    expect(await page.evaluate(() => document.documentElement.dataset.look)).toBe(look)
    const { violations } = await new AxeBuilder({ page }).analyze()
    expect(violations.filter(({ impact }) => impact === 'serious' || impact === 'critical').map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' ')}`)).toEqual([])
    await page.screenshot({ path: join(pictures, `demo-${look}-${viewport.width}.png`) })
    await page.context().close()
  }
}, 60_000)

// --- what is in view when the page opens ---

const inFrame = (page: Page, selector: string) => page.locator(selector).first().evaluate((found) => {
  const [area, frame] = [found.getBoundingClientRect(), document.querySelector('.sheet')!.getBoundingClientRect()]
  return area.top >= frame.top - 1 && area.bottom <= frame.bottom + 1 && area.left >= frame.left - 1 && area.top < frame.bottom
})

test.each([['desk', desk], ['phone', phone]] as const)('on a %s the page opens at the supply rail with the battery in view', async (_, viewport) => {
  const page = await openPage('tessarby-errand', { viewport })
  await page.waitForTimeout(300)
  expect(await page.locator('.sheet').evaluate(({ scrollTop, scrollLeft }) => [scrollTop, scrollLeft])).toEqual([0, 0])
  expect(await inFrame(page, 'g[data-kind="rail"][data-id="rail-30"]')).toBe(true)
  expect(await inFrame(page, 'g[data-kind="part"][data-id="battery"]')).toBe(true)
  await page.context().close()
})

test('the horn push is two rows of controls away at most on a phone', async () => {
  const page = await openPage('tessarby-errand', touch)
  const push = await page.locator('.control', { hasText: 'Horn button' }).boundingBox()
  expect(push!.x).toBeLessThan(phone.width)
  await page.context().close()
})

test('that nothing is lit is said in words', async () => {
  for (const viewport of [desk, phone]) {
    const page = await openPage('tessarby-errand', { viewport })
    expect(await page.locator('.lit').innerText()).toBe('Nothing is lit.')
    expect(await page.locator('.lit').isVisible()).toBe(true)
    await page.context().close()
  }
})

test('the whole is seen at once on a desk, with its names at 12 px', async () => {
  const page = await openPage('tessarby-errand')
  await page.getByRole('button', { name: 'Whole' }).click()
  await page.getByRole('button', { name: 'Read' }).waitFor()
  const seen = () => page.evaluate(() => {
    const svg = document.querySelector<SVGSVGElement>('.sheet svg')!
    const texts = [...svg.querySelectorAll('text')]
    const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width
    const sheet = document.querySelector('.sheet')!
    return {
      least: Math.min(...texts.map((text) => Number(text.getAttribute('font-size')) * scale)),
      over: [sheet.scrollWidth - sheet.clientWidth, sheet.scrollHeight - sheet.clientHeight], said: texts.map((text) => text.textContent).join(' '),
    }
  })
  await expect.poll(async () => (await seen()).over).toEqual([0, 0])
  const { least, said } = await seen()
  expect(said).not.toContain('BU/WH')
  expect(least).toBeGreaterThanOrEqual(11.9)
  expect(said).toContain('Right tail lamp')
  expect(await touchingTexts(page)).toEqual([])
  await page.screenshot({ path: join(pictures, 'demo-whole.png') })
  await page.context().close()
})

// --- the address ---

test('vehicle and setting are restored from the address', async () => {
  const page = await openPage('tessarby-errand', {}, '#year=1960&switch-box.lights=head&engine=idle&battery=low')
  expect(await page.textContent('.under')).toContain('1960')
  for (const [axis, position] of [['switch-box.lights', 'head'], ['engine', 'idle'], ['battery', 'low']]) expect(await step(page, axis, position).isChecked()).toBe(true)
  expect(await page.textContent('.lit')).toContain('headlamp')
  expect(await page.locator('.trouble').count()).toBe(0)
  await page.context().close()
})

test('a movement stands in the address, survives a reload, and is taken back by Back', async () => {
  const page = await openPage('tessarby-errand')
  await step(page, 'switch-box.lights', 'parking').click({ force: true })
  await expect.poll(() => page.textContent('.lit')).toContain('tail lamp')
  expect(new URL(page.url()).hash).toBe('#switch-box.lights=parking')
  await page.reload()
  await expect.poll(() => page.textContent('.lit')).toContain('tail lamp')
  await page.goBack()
  await expect.poll(() => page.textContent('.lit')).toBe('Nothing is lit.')
  expect(await step(page, 'switch-box.lights', 'off').isChecked()).toBe(true)
  await page.context().close()
})

test('an edition stands in the address, and Back brings the other one', async () => {
  const page = await openPage('tessarby-errand')
  await page.locator('header select').first().selectOption({ index: 1 })
  await expect.poll(() => page.textContent('.under')).toContain('1958')
  expect(new URL(page.url()).hash).toBe('#year=1958')
  await page.goBack()
  await expect.poll(() => page.textContent('.under')).toContain('1951')
  await page.context().close()
})

test('an edition left at once by Back is not the one that stays', async () => {
  const page = await openPage('tessarby-errand')
  for (let i = 0; i < 5; i++) {
    await page.locator('header select').first().evaluate((select: HTMLSelectElement) => {
      select.selectedIndex = 1
      select.dispatchEvent(new Event('change', { bubbles: true }))
      history.back()
    })
    await page.waitForTimeout(i * 60)
  }
  await expect.poll(() => page.evaluate(() => location.hash)).toBe('')
  await page.waitForTimeout(700)
  expect(await page.textContent('.under')).toContain('1951')
  expect(await page.locator('header select').first().inputValue()).toContain('1951')
  await page.context().close()
})

test('Back and Forward in haste end where the address says', async () => {
  const page = await openPage('tessarby-errand')
  await page.locator('header select').first().selectOption({ index: 1 })
  await page.evaluate(async () => {
    for (const way of [-1, 1, -1, 1]) {
      history.go(way)
      await new Promise((done) => { addEventListener('popstate', done, { once: true }) })
    }
  })
  expect(new URL(page.url()).hash).toBe('#year=1958')
  await expect.poll(() => page.textContent('.under')).toContain('1958')
  await page.waitForTimeout(500)
  expect(await page.textContent('.under')).toContain('1958')
  await page.context().close()
})

test('an edition whose wiring conflicts is listed in words, and shows its refusal under a header that still works', async () => {
  const page = await openPage('one-broken-edition')
  const built = page.locator('header select').first()
  expect(await built.locator('option').allTextContents()).toEqual(['before 1955', '1955 to 1959, does not fit together', '1960 and later'])
  await built.selectOption({ index: 1 })
  await page.waitForSelector('.refusal li')
  expect(await page.textContent('.refusal')).toContain('both are')
  expect(await page.textContent('h1')).toContain('Lamp and switch')
  await page.reload()
  await page.waitForSelector('.refusal li')
  expect(await built.inputValue()).toContain('1955')
  await built.selectOption({ index: 2 })
  await page.waitForSelector('g[data-kind="part"]')
  expect(await page.textContent('.under')).toContain('1960')
  await page.context().close()
})

test('a year that no span holds is not shown as another one', async () => {
  const page = await (await browser.newContext({ viewport: desk })).newPage()
  await page.goto(`${serving.url}?record=tessarby-errand#year=1930`)
  await page.waitForSelector('.refusal li')
  expect(await page.locator('header select').first().locator('option:checked').textContent()).toBe('1930, not in this record')
  await page.context().close()
})

test('what is drawn and picked stands in the address and survives a reload', async () => {
  const page = await openPage('test-van')
  await page.selectOption('select[aria-label="Draw"]', 'Turn stalk')
  await expect.poll(() => new URL(page.url()).hash).toBe('#circuit=Turn+stalk')
  await page.getByRole('combobox', { name: 'Find' }).fill('stalk')
  await page.locator('[data-found="part stalk"]').click()
  await page.waitForSelector('.fact-title')
  const few = await page.locator('g[data-kind="wire"]').count()
  await page.reload()
  await page.waitForSelector('.fact-title')
  expect(await page.locator('g.picked').first().getAttribute('data-id')).toContain('stalk')
  await expect.poll(() => page.locator('g[data-kind="wire"]').count()).toBe(few)
  await page.goBack()
  await expect.poll(() => page.locator('g[data-kind="wire"]').count()).toBeGreaterThan(few)
  await page.context().close()
})

test('what the address picks is in sight when the page opens', async () => {
  for (const viewport of [desk, phone]) {
    const page = await openPage('tessarby-errand', { viewport }, '#year=1961&picked=part+starter')
    await page.waitForSelector('.fact-title')
    await expect.poll(() => inFrame(page, 'g[data-kind="part"][data-id="starter"] .reach')).toBe(true)
    await page.context().close()
  }
})

test('a record opened from this computer is named, and a reload brings it back', async () => {
  const page = await openPage('test-van')
  await page.setInputFiles('input[type=file]', { name: 'mine.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(records['lamp-and-switch'])) })
  await expect.poll(() => page.textContent('h1')).toBe('Lamp and switch')
  expect(await page.textContent('.under')).toContain('mine.json from this computer')
  await page.reload()
  await expect.poll(() => page.textContent('h1')).toBe('Lamp and switch')
  await page.goBack()
  await expect.poll(() => page.textContent('h1')).not.toBe('Lamp and switch')
  await page.goto(`${serving.url}?file=other.json`)
  await page.waitForSelector('.trouble')
  expect(await page.textContent('.trouble')).toContain('other.json was opened from a file')
  await page.context().close()
})

test('among twenty circuits each can be drawn alone, and any wire is found among a hundred and forty', async () => {
  const page = await openPage('twenty-circuits')
  const wires = () => page.locator('g[data-kind="wire"][data-pick]').count()
  expect(await wires()).toBe(141)
  expect(await page.locator('select[aria-label="Draw"] option').count()).toBe(21)
  await page.selectOption('select[aria-label="Draw"]', 'Circuit 17')
  await expect.poll(wires).toBe(8)
  await find(page, 'wire', '13e', 'splice at the right lamp 13')
  await expect.poll(wires).toBe(141)
  expect(await page.locator('g.picked').getAttribute('data-id')).toBe('13e')
  await page.context().close()
})

test('words in any order find a wire, with the keys alone', async () => {
  const page = await openPage('shared-earth')
  await page.getByRole('combobox', { name: 'Find' }).fill('brown-blue at the fuse')
  await expect.poll(() => page.locator('.found [role=option]').count()).toBe(1)
  await page.keyboard.press('Enter')
  await page.waitForSelector('.fact-title')
  expect(await page.textContent('.facts h2')).toBe('Wire 1')
  await page.getByRole('combobox', { name: 'Find' }).fill('moon')
  await page.getByText('Nothing here has all these words.').waitFor()
  await page.context().close()
})

test('entries of the address that the vehicle does not know are told of and ignored', async () => {
  const page = await openPage('tessarby-errand', {}, '#sunroof.lever=open&switch-box.lights=disco&option*tow=yes&engine=idle')
  expect(await step(page, 'engine', 'idle').isChecked()).toBe(true)
  const said = await page.textContent('.trouble')
  expect(said).toContain('sunroof.lever')
  expect(said).toContain('no position “disco”')
  expect(said).toContain('option*tow')
  await page.context().close()
})

// --- facts ---

const drawn = (page: Page, kind: string, id: string) => page.locator(`g[data-kind="${kind}"][data-id="${id}"]`)

test('a switch clicked in the drawing is turned in its facts, and Esc goes back to it', async () => {
  const page = await openPage('lamp-and-switch')
  const box = (await drawn(page, 'part', 'switch').locator('.reach').boundingBox())!
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2)
  await page.locator('.facts .steps label').filter({ hasText: /^on$/ }).click()
  await expect.poll(() => words(page, 'part', 'lamp')).toMatch(/10\d %/)
  expect(await step(page, 'switch.lever', 'on').isChecked()).toBe(true)
  await page.keyboard.press('Escape')
  await page.waitForSelector('.facts', { state: 'detached' })
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-id'))).toBe('switch')
  await page.context().close()
})

test.each([['desk', desk], ['phone', phone]] as const)('on a %s what was found stays in view beside its facts', async (_, viewport) => {
  const page = await openPage('tessarby-errand', { viewport })
  for (const id of ['head-left', 'starter']) {
    await find(page, 'part', id)
    await page.waitForSelector('.fact-title')
    await expect.poll(() => drawn(page, 'part', id).locator('.reach').evaluate((found) => {
      const [area, frame] = [found.getBoundingClientRect(), document.querySelector('.sheet')!.getBoundingClientRect()]
      return area.left >= frame.left && area.right <= frame.right && area.top >= frame.top && area.bottom <= frame.bottom
    })).toBe(true)
  }
  await page.context().close()
})

test('a wire is named by its id in the drawing, in its facts and to a screen reader', async () => {
  const page = await openPage('lamp-and-switch')
  expect(await words(page, 'wire', 'w2')).toContain('w2 ')
  expect(await drawn(page, 'wire', 'w2').getAttribute('aria-label')).toContain('w2')
  await clickMiddle(page, 'w2')
  await page.waitForSelector('.fact-title')
  expect(await page.textContent('.facts h2')).toBe('Wire w2')
  await page.context().close()
})

test('the judgement comes before the figures, and sources are folded last', async () => {
  const page = await openPage('lamp-and-switch', { viewport: phone })
  await find(page, 'wire', 'w2')
  await page.waitForSelector('.judgement')
  const tops = await page.evaluate(() => ['.judgement', '.facts dl', '.sources'].map((part) => document.querySelector(part)!.getBoundingClientRect().top))
  expect([...tops].sort((a, b) => a - b)).toEqual(tops)
  const [judgement, facts] = await Promise.all(['.judgement', '.facts'].map((part) => page.locator(part).boundingBox()))
  expect(judgement!.y + judgement!.height).toBeLessThanOrEqual(facts!.y + facts!.height)
  expect(await page.locator('.sources p').first().isVisible()).toBe(false)
  await page.getByText('Sources').click()
  expect(await page.locator('.sources p').first().evaluate((one) => parseFloat(getComputedStyle(one).fontSize))).toBeGreaterThanOrEqual(12)
  expect(await page.textContent('.sources p')).toContain('ISO 6722')
  await page.context().close()
})

// --- what is live, and what the signs mean ---

test('the supply rail and the battery lead show that they are live', async () => {
  const page = await openPage('lamp-and-switch')
  const edges = (kind: string) => drawn(page, kind, 'rail-30').evaluate((group) => [...group.querySelectorAll('polyline')].filter((one) => one.getAttribute('stroke') === 'var(--live)').map((one) => Number(one.getAttribute('stroke-width'))))
  const [atRest] = await edges('rail')
  expect(atRest).toBeGreaterThan(0)
  await choice(page, 'on').click()
  await expect.poll(async () => (await edges('rail'))[0]).toBeGreaterThan(atRest)
  expect(await edges('wire')).toEqual(await edges('rail'))
  await page.context().close()
})

test('the drawing says what its per cent are of', async () => {
  const page = await openPage('lamp-and-switch')
  expect(await page.textContent('.sheet svg')).toContain('per cent of its rated volts')
  await page.context().close()
})

test('notes and assumptions are folded below the drawing', async () => {
  const page = await openPage('test-van')
  const summary = page.locator('.under-drawing summary')
  expect(await summary.innerText()).toMatch(/\d+ assumed values/)
  await summary.click()
  expect(await page.locator('.notes li').count()).toBeGreaterThan(3)
  expect(await page.locator('.notes').isVisible()).toBe(true)
  await page.context().close()
})

test('what must be seen at once stands open, and what nothing is joined to leads to its part', async () => {
  const page = await openPage('fuse-box')
  expect(await page.locator('.told').innerText()).toContain('has blown its fuse right')
  expect(await words(page, 'part', 'box')).toContain('right blown')
  await page.context().close()
  const other = await openPage('lost-earth', {}, '#switch.lever=on')
  await other.locator('.look .link', { hasText: 'lamp out' }).click()
  await other.waitForSelector('.judgement')
  expect(await other.textContent('.judgement')).toContain('no way to earth')
  expect(await other.locator('g.picked').getAttribute('data-id')).toBe('lamp')
  await other.context().close()
})

test('where more is lit than two lines hold a button says so and shows it', async () => {
  const page = await openPage('tessarby-errand', { viewport: phone }, '#year=1961&switch-box.key=on&switch-box.lights=head&brake-switch.pedal=pressed')
  const shownOf = () => page.locator('.lit p').evaluate((one) => one.scrollHeight - one.clientHeight)
  expect(await shownOf()).toBeGreaterThan(2)
  await page.getByRole('button', { name: 'All', exact: true }).click()
  expect(await shownOf()).toBeLessThanOrEqual(2)
  await page.context().close()
})

test('on a phone nothing of the header is cut off, and the whole is seen at once', async () => {
  const page = await openPage('tessarby-errand', touch)
  await page.getByRole('combobox', { name: 'Find' }).tap()
  await page.locator('.found').waitFor()
  expect(await page.evaluate(() => [document.documentElement.scrollWidth, document.body.scrollLeft])).toEqual([phone.width, 0])
  await page.keyboard.press('Escape')
  await page.getByRole('button', { name: 'Vehicle' }).tap()
  for (const control of await page.locator('.choices > *').all()) {
    const box = (await control.boundingBox())!
    expect(box.x + box.width).toBeLessThanOrEqual(phone.width)
  }
  await page.getByRole('button', { name: 'Done' }).tap()
  await page.getByRole('button', { name: 'Whole' }).click()
  await page.getByRole('button', { name: 'Read' }).waitFor()
  await expect.poll(() => page.locator('.sheet').evaluate((sheet) => [sheet.scrollWidth - sheet.clientWidth, sheet.scrollHeight - sheet.clientHeight])).toEqual([0, 0])
  await page.screenshot({ path: join(pictures, 'demo-phone-whole.png') })
  await page.context().close()
})

test('on paper the drawing stands on one page with vehicle, setting and what is lit, without controls', async () => {
  const page = await openPage('tessarby-errand', { colorScheme: 'dark' }, '#year=1961&switch-box.lights=parking')
  await page.emulateMedia({ media: 'print' })
  await page.setViewportSize({ width: 1040, height: 710 })
  for (const hidden of ['.controls', '.tools', '.choices']) expect(await page.locator(hidden).isVisible()).toBe(false)
  expect(await page.locator('.printed').first().innerText()).toMatch(/lights parking; all other controls at rest; engine stopped; battery full\.\s+Lit, in per cent/)
  const [head, svg] = await Promise.all(['.head', '.sheet svg'].map((part) => page.locator(part).boundingBox()))
  expect(svg!.width).toBeLessThanOrEqual(1040)
  expect(svg!.y + svg!.height - head!.y).toBeLessThanOrEqual(710)
  expect(await page.locator('.printed li').count()).toBeGreaterThan(3)
  const pdf = await page.pdf({ preferCSSPageSize: true, path: join(pictures, 'demo.pdf') })
  expect(pdf.length).toBeGreaterThan(10_000)
  await page.context().close()
})

test('every problem of a damaged record can be read on a phone', async () => {
  const page = await (await browser.newContext(touch)).newPage()
  await page.goto(`${serving.url}?record=damaged`)
  await page.waitForSelector('.refusal li')
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phone.width)
  const last = page.locator('.refusal li').last()
  await last.scrollIntoViewIfNeeded()
  const box = (await last.boundingBox())!
  expect(box.x + box.width).toBeLessThanOrEqual(phone.width)
  expect(box.y + box.height).toBeLessThanOrEqual(phone.height)
  expect(await page.textContent('.refusal')).toContain('expected')
  await page.screenshot({ path: join(pictures, 'damaged-phone.png') })
  await page.context().close()
})
