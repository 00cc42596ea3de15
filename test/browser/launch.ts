import { chromium, type Browser } from 'playwright-core'
import { inject } from 'vitest'

const flags = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

/** A fresh headless browser; whoever launches it closes it. Once a test file is enough: launch in `beforeAll`. */
export async function launchBrowser(): Promise<Browser> {
  const found = inject('browser')
  if (!found) throw new Error('no browser for the tests: install Chrome or Chromium, or name one in LOOMWRIGHT_BROWSER')
  const env = Object.entries({ ...process.env, ...found.env }).filter((entry) => entry[1] !== undefined)
  return chromium.launch({ executablePath: found.path, args: flags, env: Object.fromEntries(env) as Record<string, string> })
}
