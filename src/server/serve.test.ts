import { mkdtemp, mkdir, rm, writeFile } from 'node:fs/promises'
import { request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { serve, type Serving } from './serve.ts'

let folder: string
let serving: Serving

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'serve-'))
  await mkdir(join(folder, 'page'))
  await writeFile(join(folder, 'page/index.html'), '<!doctype html><title>here</title>')
  await writeFile(join(folder, 'van.json'), '{"a":1}')
  await writeFile(join(folder, 'secret.json'), 'secret')
  serving = await serve({ files: [join(folder, 'van.json'), join(folder, 'page/../van.json')], port: 0, page: join(folder, 'page') })
})

afterAll(async () => {
  await serving.close()
  await rm(folder, { recursive: true })
})

test('it listens on this machine alone', () => {
  expect(serving.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/)
})

test('records go by name, two of one name apart', async () => {
  expect(await (await fetch(`${serving.url}api/records`)).json()).toEqual({ records: ['van', 'van-2'] })
  expect(await (await fetch(`${serving.url}api/records/van`)).text()).toBe('{"a":1}')
  expect((await fetch(`${serving.url}api/records/bus`)).status).toBe(404)
})

test('the page is given out and nothing beside it', async () => {
  expect(await (await fetch(serving.url)).text()).toContain('here')
  expect((await fetch(`${serving.url}..%2fsecret.json`)).status).toBe(404)
  expect((await fetch(`${serving.url}%2e%2e/secret.json`)).status).toBe(404)
  expect((await fetch(`${serving.url}nothing.js`)).status).toBe(404)
})

test('a foreign host name is refused', async () => {
  const status = await new Promise((resolve, reject) => {
    request(serving.url, { headers: { host: 'elsewhere.example' } }, (answer) => { resolve(answer.statusCode) }).on('error', reject).end()
  })
  expect(status).toBe(403)
})
