// The command line on files that hold whatever a test puts in them.
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { runCommand } from '../../src/cli/run-command.ts'

export interface Ran { readonly code: number; readonly printed: string; readonly said: string }

const folder = mkdtempSync(join(tmpdir(), 'loomwright-'))

/** Runs `command FILE …` on a file of these bytes. */
export async function runOn(content: string | Uint8Array, command: string, ...more: readonly string[]): Promise<Ran> {
  const file = join(folder, 'hostile.json')
  writeFileSync(file, content)
  return run(command, file, ...more)
}

export async function run(...args: readonly string[]): Promise<Ran> {
  const printed: string[] = [], said: string[] = []
  const code = await runCommand(args, { print: (text) => { printed.push(text) }, complain: (text) => { said.push(text) }, progress: () => undefined })
  return { code, printed: printed.join('\n'), said: said.join('\n') }
}

export const DEMO = readFileSync(new URL('../../examples/vehicles/tessarby-errand.json', import.meta.url))
