import type { TestProject } from 'vitest/node'
import { findBrowser, type Browser } from './find-browser.ts'

declare module 'vitest' {
  interface ProvidedContext {
    browser: Browser | null
  }
}

/** Finds the browser once a run; `launchBrowser` in the test files starts it. */
export default async function setUp(project: TestProject): Promise<void> {
  project.provide('browser', (await findBrowser()) ?? null)
}
