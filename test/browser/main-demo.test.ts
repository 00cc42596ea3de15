// The main demo vehicle on the page: its editions and options, by circuit and whole, connection cards, search.
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { find, pictures, root, servePage, step, touch, type ServedPage } from './served-page.ts'

let served: ServedPage
beforeAll(async () => { served = await servePage(async () => Promise.resolve([join(root, 'examples/vehicles/ullenscombe-warden.json')])) })
afterAll(async () => { await served.close() })

const open: ServedPage['open'] = (...asked) => served.open(...asked)
const WARDEN = 'ullenscombe-warden'
const LIGHTS = 'key.key=on&light-switch.lights=head'

test.each([[1950, '6 V, positive earth · 64 wires'], [1956, '12 V, positive earth · 73 wires'], [1961, '12 V, negative earth · 119 wires'], [1966, '12 V, negative earth · 146 wires']] as const)(
  'the tender of %s opens, and its headlamps light', async (year, under) => {
    const page = await open(WARDEN, {}, `#year=${year}&${LIGHTS}`)
    expect(await page.textContent('.under')).toBe(`${year} · ${under}`)
    expect(await page.textContent('.lit')).toMatch(/Left headlamp \(dipped beam\) \d+ %/)
    await page.screenshot({ path: join(pictures, `tender-${year}.png`) })
    await page.getByRole('button', { name: 'Whole' }).click()
    await page.getByRole('button', { name: 'Read' }).waitFor()
    await page.locator('svg.is-whole').waitFor()
    await page.screenshot({ path: join(pictures, `tender-${year}-whole.png`) })
    await page.context().close()
  })

test('years and options are chosen, and each brings its wires', async () => {
  const page = await open(WARDEN)
  await page.getByLabel('Built').selectOption('1964 to 1968')
  await expect.poll(() => page.textContent('.under')).toContain('146 wires')
  for (const option of ['Hand lamp plugged in', 'Pump panel', 'Search lamp', 'Second battery', 'Two-tone horn']) await page.getByLabel(option).check()
  await expect.poll(() => page.textContent('.under')).toContain('174 wires')
  expect(await step(page, 'two-tone-switch.press', 'on').count()).toBe(1)
  await page.context().close()
})

test('each circuit of the latest edition can be drawn alone', async () => {
  const page = await open(WARDEN, {}, '#year=1966')
  const names = await page.getByRole('combobox', { name: 'Draw' }).locator('option').allTextContents()
  expect(names.length).toBeGreaterThanOrEqual(13)
  for (const name of names.slice(1)) {
    await page.getByRole('combobox', { name: 'Draw' }).selectOption({ label: name })
    await expect.poll(() => new URLSearchParams(new URL(page.url()).hash.slice(1)).get('circuit')).toBe(name)
    await expect.poll(() => page.locator('g[data-kind="part"]').count()).toBeLessThan(60)
  }
  await page.context().close()
})

test('brown-white at the dip switch is found by these words', async () => {
  const page = await open(WARDEN, {}, '#year=1966')
  await page.getByRole('combobox', { name: 'Find' }).fill('brown-white at the dip switch')
  await expect.poll(() => page.locator('.found li').first().textContent()).toMatch(/brown with white, 28\/0\.30.*Foot dip switch/)
  await page.keyboard.press('Enter')
  await expect.poll(() => page.textContent('.fact-title')).toBe('brown with white, 28/0.30')
  await page.context().close()
})

test('a connection card shows each terminal with its wire, live, and goes back to the drawing', async () => {
  const page = await open(WARDEN, {}, '#year=1966&key.key=on')
  await find(page, 'part', 'dip-switch', 'dip switch')
  await page.getByRole('button', { name: 'Connection card' }).click()
  const card = page.getByRole('region', { name: 'Connection card' })
  await card.waitFor()
  expect(await card.locator('text').allTextContents()).toEqual([
    'Foot dip switch', 'Pedals', 'brown with white · BN/WH 28/0.30', 'to Lighting switch, 56', '56', 'blue with white · BU/WH 14/0.30', 'to Main-beam relay, 86', '56a', 'blue with red · BU/RD 14/0.30', 'to Dipped-beam relay, 86', '56b',
  ])
  const isLive = () => card.locator('polyline[stroke="var(--live)"]').count()
  expect(await isLive()).toBe(0)
  await step(page, 'light-switch.lights', 'head').first().click({ force: true })
  await expect.poll(isLive).toBe(2)
  expect(new URL(page.url()).hash).toContain('card=yes')
  expect((await new AxeBuilder({ page }).include('.card').include('.facts').analyze()).violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([])
  await page.screenshot({ path: join(pictures, 'connection-card.png') })
  await page.reload()
  await card.waitFor()
  await page.keyboard.press('Escape')
  await card.waitFor({ state: 'detached' })
  expect(await page.textContent('.fact-title')).toBe('Foot dip switch')
  await page.context().close()
})

test('the keys go into the drawing, from part to part, and pick', async () => {
  const page = await open(WARDEN, {}, '#year=1950&circuit=headlamps')
  await page.locator('.sheet').focus()
  const focused = () => page.evaluate(() => (document.activeElement as SVGElement | null)?.dataset.id ?? document.activeElement?.className)
  await page.keyboard.press('Enter')
  const first = await focused()
  await page.keyboard.press('ArrowRight')
  const second = await focused()
  expect([first === undefined, first === second]).toEqual([false, false])
  await page.keyboard.press('Enter')
  await page.locator('.facts').waitFor()
  await page.keyboard.press('Escape')
  await expect.poll(focused).toBe(second)
  await page.keyboard.press('Escape')
  expect(await focused()).toBe('sheet')
  await page.context().close()
})

test('a fuse of a box is found by its own number', async () => {
  const page = await open(WARDEN, {}, '#year=1966')
  await page.getByRole('combobox', { name: 'Find' }).fill('fuse 7')
  await expect.poll(() => page.locator('.found li').first().textContent()).toBe('Fuse 7 of Fuse box, 10 A')
  await page.context().close()
})

test('on a phone the drawing has room beside a vehicle of many options, and the card fills it', async () => {
  const page = await open(WARDEN, touch, '#year=1966&picked=part+fuse-box')
  const sheet = (await page.locator('.sheet').boundingBox())!
  expect(sheet.height).toBeGreaterThan(230)
  await page.getByRole('button', { name: 'Vehicle' }).tap()
  await page.getByLabel('Pump panel').waitFor()
  await page.getByRole('button', { name: 'Done' }).tap()
  await page.getByRole('button', { name: 'Connection card' }).tap()
  const card = (await page.getByRole('region', { name: 'Connection card' }).boundingBox())!
  expect(card.width).toBe(390)
  const letters = await page.locator('.card text').evaluateAll((texts) => Math.min(...texts.map((text) => parseFloat(getComputedStyle(text).fontSize) * (text.closest('svg') as SVGSVGElement).getScreenCTM()!.a)))
  expect(letters).toBeGreaterThanOrEqual(12)
  await page.screenshot({ path: join(pictures, 'connection-card-phone.png') })
  await page.context().close()
})
