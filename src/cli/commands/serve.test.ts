import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { makeLampAndSwitch } from '../../../test/builders/small-records.ts'
import { serve } from './serve.ts'

const demo = join(import.meta.dirname, '../../../examples/vehicles/tessarby-errand.json')

/** Serves until the address is printed, and gives back all that was said by then and shortly after. */
async function hear(args: readonly string[]): Promise<string[]> {
  const said: string[] = []
  const listen = (text: string) => { said.push(text) }
  const done = serve(args, { print: listen, complain: listen, progress: () => undefined })
  await expect.poll(() => said.some((line) => line.includes('Loomwright is at')), { timeout: 10_000 }).toBe(true)
  process.emit('SIGTERM')
  await done
  return said
}

test('a taken port is said with the one taken instead', async () => {
  const other = createServer()
  await new Promise<void>((listening) => { other.listen(0, '127.0.0.1', listening) })
  const { port } = other.address() as AddressInfo
  const [first, second] = await hear([demo, '--port', String(port)])
  other.close()
  const instead = new URL(/http:\S+/.exec(second)![0]).port
  expect(first).toBe(`Port ${port} is taken: ${instead} instead.`)
  expect(Number(instead)).toBeGreaterThan(0)
})

test('what is wrong with a record is said beside the address', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'serve-'))
  const file = join(folder, 'damaged.json')
  await writeFile(file, JSON.stringify({ ...makeLampAndSwitch(), parts: { lamp: { kind: 'lmap', title: 'Lamp' } } }))
  const said = (await hear([file, '--port', '0'])).join('\n')
  await rm(folder, { recursive: true })
  expect(said).toContain('damaged.json: The record cannot be read')
  expect(said).toContain('parts.lamp')
})
