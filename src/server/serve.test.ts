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
  const odd = ['gone.json', 'folder.json', `${'a'.repeat(3000)}.json`, 'zero\0byte.json'].map((name) => join(folder, name))
  await mkdir(join(folder, 'folder.json'))
  serving = await serve({ files: [join(folder, 'van.json'), join(folder, 'page/../van.json'), ...odd], port: 0, page: join(folder, 'page') })
})

afterAll(async () => {
  await serving.close()
  await rm(folder, { recursive: true })
})

test('it listens on this machine alone', () => {
  expect(serving.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/)
})

test('records go by name, two of one name apart', async () => {
  expect(await (await fetch(`${serving.url}api/records`)).json()).toMatchObject({ records: ['van', 'van-2', 'gone', 'folder', expect.any(String), expect.any(String)] })
  expect(await (await fetch(`${serving.url}api/records/van`)).text()).toBe('{"a":1}')
  expect((await fetch(`${serving.url}api/records/bus`)).status).toBe(404)
})

test('the page is given out and nothing beside it', async () => {
  expect(await (await fetch(serving.url)).text()).toContain('here')
  expect((await fetch(`${serving.url}..%2fsecret.json`)).status).toBe(404)
  expect((await fetch(`${serving.url}%2e%2e/secret.json`)).status).toBe(404)
  expect((await fetch(`${serving.url}nothing.js`)).status).toBe(404)
})

/** The answer to a request whose path goes out as it stands: `fetch` would tidy it. */
function ask(path: string, method = 'GET', body = ''): Promise<{ readonly status: number; readonly text: string }> {
  return new Promise((resolve, reject) => {
    const { port } = new URL(serving.url)
    request({ host: '127.0.0.1', port, path, method, headers: { 'content-length': Buffer.byteLength(body) } }, (answer) => {
      let text = ''
      answer.on('data', (piece: Buffer) => { text += piece.toString() })
      answer.on('end', () => { resolve({ status: answer.statusCode ?? 0, text }) })
    }).on('error', reject).end(body)
  })
}

test.each([
  '/../secret.json', '/page/../../secret.json', '/%2e%2e%2fsecret.json', '/..%5csecret.json', '//etc/passwd', '/x%00.json', '/index.html%00.json', `/${'a'.repeat(300)}.json`, `/${'a'.repeat(9000)}.json`,
  '/index.html/x.json', '/%', '/%ff.json', '/__proto__', '/api/records/..%2fsecret', '/api/records/%00', '/api/records/__proto__', '/api/records/constructor', '/api/records/%', `/api/records/${'a'.repeat(9000)}`,
])('%s leads nowhere', async (path) => {
  expect(await ask(path)).toMatchObject({ status: 404, text: expect.stringMatching(/^there is (nothing here|no such record)$/) as string })
})

test('a path longer than any is refused', async () => {
  expect(await ask(`/${'a'.repeat(100_000)}`)).toEqual({ status: 431, text: '' })
})

test.each(['POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS'])('%s is refused, whatever it brings', async (method) => {
  for (const path of ['/', '/api/records', '/api/records/van', '/../x']) {
    expect(await ask(path, method, '{"__proto__":'.repeat(1000))).toEqual({ status: 405, text: 'there is nothing to do here but to read' })
  }
})

test('a record whose file has gone, is a folder or has no possible name is not there', async () => {
  for (const name of ['gone', 'folder', 'a'.repeat(3000), 'zero\0byte']) expect((await ask(`/api/records/${encodeURIComponent(name)}`)).status).toBe(404)
  expect((await ask('/api/records/van')).status).toBe(200)
})

test('a foreign host name is refused', async () => {
  const status = await new Promise((resolve, reject) => {
    request(serving.url, { headers: { host: 'elsewhere.example' } }, (answer) => { resolve(answer.statusCode) }).on('error', reject).end()
  })
  expect(status).toBe(403)
})
