import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { launchBrowser } from './launch.ts'

const html = '<!doctype html><title>Bench</title><p>no lamp lit</p><script>document.querySelector("p").textContent = "lit"</script>'

let browser: Browser
let server: Server

beforeAll(async () => {
  browser = await launchBrowser()
  server = createServer((_, response) => response.setHeader('content-type', 'text/html').end(html))
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening))
})

afterAll(async () => {
  await browser.close()
  server.close()
})

test('the browser runs a page from this computer', async () => {
  const page = await browser.newPage()
  await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`)
  expect(await page.title()).toBe('Bench')
  expect(await page.textContent('p')).toBe('lit')
})

test('the browser has a font to letter with', async () => {
  const page = await browser.newPage()
  await page.setContent('<span style="font: 40px sans-serif">58d</span>')
  const width = await page.evaluate(() => document.querySelector('span')?.getBoundingClientRect().width)
  expect(width).toBeGreaterThan(40)
})
