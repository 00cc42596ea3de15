import { existsSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { partKinds } from '../../src/parts/index.ts'
import { LARGEST_BYTES, readRecord } from '../../src/record/index.ts'
import { judgeWords } from './answer.ts'
import { DEMO, run, runOn } from './run.ts'

describe('a damaged file', () => {
  const cuts = Array.from({ length: 100 }, (_, percent) => Math.floor(DEMO.length * percent / 100))

  test('cut off anywhere is refused by line and column', async () => {
    for (const at of cuts) {
      const { code, printed, said } = await runOn(DEMO.subarray(0, at), 'check')
      expect([code, printed]).toEqual([2, ''])
      expect(said).toMatch(/^The record cannot be read: 1 problem\.\nthe document: this is not JSON: line \d+, column \d+: expected .+, found .+\.$/)
    }
  })

  test.each([
    ['UTF-16 with its mark', Buffer.from(`\uFEFF${DEMO.toString()}`, 'utf16le'), 'looks like UTF-16'],
    ['UTF-16 without', Buffer.from(DEMO.toString(), 'utf16le'), 'looks like UTF-16'],
    ['UTF-16 the other way round', Buffer.from(`\uFEFF${DEMO.toString()}`, 'utf16le').swap16(), 'looks like UTF-16'],
    ['Latin-1', Buffer.from('{"title":"Bürger"}', 'latin1'), 'is not UTF-8 text'],
    ['a letter cut in two', Buffer.from('{"title":"ü').subarray(0, -1), 'is not UTF-8 text'],
    ['nothing', Buffer.alloc(0), 'the file is empty'],
    ['a comment', Buffer.from('{ // my van\n  "id": "v" }'), 'JSON knows no comments'],
    ['curly quotes', Buffer.from('{ “id”: "v" }'), 'put straight quotes'],
    ['zeros', Buffer.alloc(1000), 'UTF-16'],
    ['a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]), 'is no text but a picture'],
    ['a PDF', Buffer.from('%PDF-1.7\n'), 'is no text but a PDF'],
  ])('that holds %s is refused in a sentence', async (_name, bytes, sentence) => {
    const { code, said } = await runOn(bytes, 'solve')
    expect(code).toBe(2)
    expect(said).toContain(sentence)
    expect(judgeWords(said)).toEqual([])
  })

  test('is not served', async () => {
    expect(await runOn(Buffer.from('\uFEFF{}', 'utf16le'), 'serve')).toMatchObject({ code: 2, said: expect.stringContaining('looks like UTF-16') as string })
    expect((await run('serve', import.meta.dirname)).said).toContain('is a folder')
    expect((await run('serve', '--port', '__proto__')).said).toBe('--port takes a number from 0 to 65535, not "__proto__"')
  })

  test('with a byte order mark is read', async () => {
    expect(await runOn(Buffer.concat([Buffer.from('\uFEFF'), DEMO]), 'check', '--year', '1960')).toMatchObject({ code: 0, said: '' })
  })

  test('that is a folder, or is not there, is refused in a sentence', async () => {
    expect((await run('check', import.meta.dirname)).said).toContain('is a folder')
    expect((await run('solve', '/no/such/file.json')).said).toBe('there is no file /no/such/file.json')
  })
})

describe('size', () => {
  // Were it read before it is measured, the nesting would be told, not the size.
  const brackets = '['.repeat(LARGEST_BYTES + 1)

  test('a file a byte above 20 MB is refused by its size, unread', async () => {
    const { code, said } = await runOn(brackets, 'check')
    expect(code).toBe(2)
    expect(said).toMatch(/is too large: a record has at most 20 MB$/)
  })

  test.skipIf(!existsSync('/dev/zero'))('a file that never ends is refused by its size (skipped where there is no /dev/zero)', async () => {
    expect((await run('check', '/dev/zero')).said).toMatch(/is too large/)
  })

  test('so is a text, and one of exactly 20 MB is read', () => {
    expect(readRecord(brackets, partKinds)).toMatchObject({ count: 1, problems: [{ sentence: 'the document: expected at most 20 MB of text, found 20.000001 MB.' }] })
    expect(readRecord(brackets.slice(1), partKinds)).toMatchObject({ problems: [{ expected: 'at most 100 levels of nesting' }] })
  })

  test.each([
    ['a million keys', `{${Array.from({ length: 1e6 }, (_, i) => `"k${i}":1`).join(',')}}`, 'the document: this holds more than 20000 entries'],
    ['one key a million times', `{"wires":{${'"w1":1,'.repeat(1e6)}`, 'wires: this holds more than 20000 entries'],
    ['three million numbers', `[${'1.5,'.repeat(3e6)}1]`, 'the document: this holds more than 1000000 values'],
    ['nine million lists', `[${'[[[[[]]]]],'.repeat(1.8e6)}1]`, 'the document: this holds more than 1000000 values'],
  ])('%s are refused for their number', async (_name, text, said) => {
    expect(await runOn(text, 'check')).toMatchObject({ code: 2, said: expect.stringContaining(said) as string })
  })

  test.each([['[', ']'], ['{"a":', '}']])('101 levels of %s are refused, 100 are read', (open, close) => {
    const nested = (levels: number) => readRecord(open.repeat(levels) + '1' + close.repeat(levels), partKinds)
    expect(nested(101)).toMatchObject({ count: 1, problems: [{ expected: 'at most 100 levels of nesting' }] })
    expect(nested(100)).not.toMatchObject({ problems: [{ expected: 'at most 100 levels of nesting' }] })
  })
})

describe('ten thousand problems', () => {
  const MANY = 10_000
  const demo = JSON.parse(DEMO.toString()) as Record<string, object>
  const many = (entry: (i: number) => readonly [string, unknown]) => Object.fromEntries(Array.from({ length: MANY }, (_, i) => entry(i)))
  const wire = (from: string, to: string, more: object = {}) => ({ ends: [{ at: from }, { at: to }], ...more })
  const sound = { ...demo, claims: {}, duties: {} }

  // Each of these took minutes when every problem looked for its nearest name, shown or not.
  test.each([
    ['keys that are not known', { ...sound, wires: many((i) => [`w${i}`, wire('battery:+', 'battery:-', { colur: 'red' })]) }, MANY, 'wires.w0.colur', 'colour'],
    ['ends at parts that are not there, among as many parts', {
      ...sound, parts: { ...demo.parts, ...many((i) => [`prt${i}`, { kind: 'resistor', title: '' }]) }, wires: many((i) => [`w${i}`, wire(`part${i}:a`, 'battery:-')]),
    }, MANY, 'wires.w0.ends.0.at', 'prt0:a'],
    ['looms that are not there', { ...sound, wires: many((i) => [`w${i}`, wire('battery:+', 'battery:-', { loom: 'front-lom' })]) }, MANY, 'wires.w0.loom', 'front-loom-51'],
    ['positions that are not there, among as many', {
      ...sound, parts: { ...demo.parts, extra: {
        kind: 'control', title: '', params: { axes: { p: { positions: Array.from({ length: MANY }, (_, i) => `at${i}`), rest: 'at0' } }, rows: many((i) => [`r${i}`, { when: { p: [`ta${i}`] }, joins: ['a', 'b'] }]) },
      } },
    }, MANY, 'parts.extra.params.rows.r0.when.p.0', 'at0'],
  ])('%s: the first hundred, each with its path and nearest name, and the count', (_name, document, least, path, nearest) => {
    const read = readRecord(JSON.stringify(document), partKinds)
    if (read.ok) throw new Error('it is refused')
    expect(read.count).toBeGreaterThanOrEqual(least)
    expect(read.problems).toHaveLength(100)
    const first = read.problems.find((problem) => problem.path.join('.') === path)
    expect(first?.nearest).toBe(nearest)
    expect(first?.sentence.startsWith(`${path}: `)).toBe(true)
  })

  test('keys written twice on one line are each told by their place', () => {
    const keys = Array.from({ length: MANY }, (_, i) => `"${'k'.repeat(100)}${i}":1`)
    const read = readRecord(`{${[...keys, ...keys].join(',')}}`, partKinds)
    expect(read).toMatchObject({ ok: false })
    expect(!read.ok && read.count).toBeGreaterThanOrEqual(MANY)
    expect(!read.ok && read.problems[99].sentence).toMatch(/is written twice, the second time at line 1, column \d{7}\.$/)
  })

  test('the command line says how many more there are', async () => {
    const { code, said } = await runOn(JSON.stringify({ ...sound, ...many((i) => [`wirez${i}`, 1]) }), 'check')
    expect(code).toBe(2)
    const lines = said.split('\n')
    expect(lines).toHaveLength(102)
    expect([lines[0], lines[1], lines[101]]).toEqual(['The record cannot be read: 10000 problems.', 'wirez0: wirez0 is not known here; the nearest is wires.', '… and 9900 more'])
  })

  test('a name of a million letters is shown by its beginning', () => {
    const read = readRecord(JSON.stringify({ ...sound, wires: { ['k'.repeat(1e6)]: many((i) => [`q${i}`, 1]) } }), partKinds)
    if (read.ok) throw new Error('it is refused')
    for (const { sentence } of read.problems) expect(sentence.length).toBeLessThan(1000)
  })
})
