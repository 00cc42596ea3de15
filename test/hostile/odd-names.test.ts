import { describe, expect, test } from 'vitest'
import { partKinds } from '../../src/parts/index.ts'
import { readRecord } from '../../src/record/index.ts'
import { judgeWords } from './answer.ts'
import type { Loose } from './damage.ts'
import { DEMO, run, runOn, type Ran } from './run.ts'

const NAMES = ['__proto__', 'constructor', 'toString', 'hasOwnProperty']

/** Battery, a switch of one axis, a resistor, and something of each collection that names may stand in. */
const PLAIN = {
  format: 'loomwright-record', version: 1, id: 'plain', title: 'Plain', supply: { s: { systemV: 12, earth: 'negative' } }, metals: { body: { title: 'body' } },
  markets: { home: { title: 'Home' } }, options: { heater: { title: 'Heater', usual: true } }, serials: { chassis: { title: 'Chassis', prefixes: ['A'] } },
  parts: {
    battery: { kind: 'battery', title: 'Battery' }, load: { kind: 'resistor', title: 'Load', params: { ohm: 6 } },
    switch: { kind: 'control', title: 'Switch', params: { axes: { p: { positions: ['off', 'on'], rest: 'off' } }, rows: { r: { when: { p: ['on'] }, joins: ['a', 'b'] } } } },
  },
  wires: {
    w1: { ends: [{ at: 'battery:+' }, { at: 'switch:a' }] }, w2: { ends: [{ at: 'switch:b' }, { at: 'load:a' }] },
    w3: { ends: [{ at: 'load:b' }, { at: 'body' }] }, w4: { ends: [{ at: 'battery:-' }, { at: 'body' }] },
  },
}

/** The plain record with one of its texts replaced wherever it stands, keys too: an own `__proto__` cannot be written otherwise. */
const withText = (old: string, name: string) => JSON.stringify(PLAIN).replaceAll(`"${old}"`, `"${name}"`)

function problemsOf(text: string): { path: string; sentence: string }[] {
  const read = readRecord(text, partKinds)
  return read.ok ? [] : read.problems.map(({ path, sentence }) => ({ path: path.join('.'), sentence }))
}

test('the plain record is sound', () => {
  expect(problemsOf(JSON.stringify(PLAIN))).toEqual([])
})

describe.each(NAMES)('%s', (name) => {
  test.each([
    ['a part', 'load', 'parts'], ['a wire', 'w1', 'wires'], ['an option', 'heater', 'options'], ['a market', 'home', 'markets'], ['a series', 'chassis', 'serials'],
    ['an axis', 'p', 'parts.switch.params.axes'], ['a row', 'r', 'parts.switch.params.rows'], ['a metal', 'body', 'metals'],
  ])('is refused as the id of %s', (_what, id, at) => {
    expect(problemsOf(withText(id, name))).toContainEqual({ path: `${at}.${name}`, sentence: `${at}.${name}: ${name} cannot be used as a name.` })
  })

  test.each([
    ['a terminal', (r: Loose) => { r.wires.w1.ends[0].at = `battery:${name}` }, 'wires.w1.ends.0.at'],
    ['the part of an end', (r: Loose) => { r.wires.w1.ends[0].at = `${name}:a` }, 'wires.w1.ends.0.at'],
    ['a splice or metal', (r: Loose) => { r.wires.w1.ends[0].at = name }, 'wires.w1.ends.0.at'],
    ['a loom', (r: Loose) => { r.wires.w1.loom = name }, 'wires.w1.loom'],
    ['a loom that is left', (r: Loose) => { r.looms = { l: { title: '', points: { a: {} }, branches: {} } }; Object.assign(r.wires.w1, { loom: name, ends: [{ at: 'battery:+', leaves: 'a' }, { at: 'switch:a' }] }) }, 'wires.w1.loom'],
    ['a duty\'s part and control', (r: Loose) => { r.duties = { d: { title: '', when: { [`${name}.p`]: ['on'] }, must: [name], mustNot: [], may: [] } } }, 'duties.d.must.0'],
    ['an option of a condition', (r: Loose) => { r.wires.w1.fits = [{ with: [name] }] }, 'wires.w1.fits.0.with.0'],
    ['a series of a condition', (r: Loose) => { r.wires.w1.fits = [{ serials: { series: name } }] }, 'wires.w1.fits.0.serials.series'],
    ['a kind', (r: Loose) => { r.parts.load.kind = name }, 'parts.load.kind'],
    ['an end of a kind', (r: Loose) => { r.parts.load.terminals = { t: { is: name } } }, 'parts.load.terminals.t.is'],
    ['a position', (r: Loose) => { r.parts.switch.params.axes.p.rest = name }, 'parts.switch.params.axes.p.rest'],
    ['what a claim is about', (r: Loose) => { r.claims = { c: { about: ['wires', 'w1', name], says: 1, how: 'measured' } } }, 'claims.c.about.2'],
  ])('names nothing as %s', (_what, change, path) => {
    const record = structuredClone(PLAIN)
    change(record)
    const found = problemsOf(JSON.stringify(record))
    expect(found.filter((problem) => problem.path === path)).toHaveLength(1)
    expect(found.flatMap(({ sentence }) => judgeWords(sentence))).toEqual([])
  })

  test('is a position as any other where the record calls one so', async () => {
    const { code, printed } = await runOn(withText('on', name), 'solve', '--set', `switch=${name}`, '--json')
    expect(code).toBe(0)
    expect(JSON.parse(printed)).toMatchObject({ setting: { controls: { 'switch.p': name } }, positions: { 'switch.p': name }, wires: { w3: { amps: expect.closeTo(2, 0) as number } } })
  })

  test.each([
    ['--set', `${name}=on`], ['--set', `switch.${name}=on`], ['--set', `switch=${name}`], ['--set', name], ['--engine', name], ['--battery', name], ['--phase', `${name}=lit`],
    ['--market', name], ['--option', name], ['--serial', `${name}=A1`], ['--fault', `open:${name}`], ['--fault', `ohms:${name}=1`], ['--fault', `join:${name}=body`],
    ['--fault', `swap:body=${name}`], ['--fault', `set:${name}.ohm=1`], ['--fault', `set:load.${name}=1`], ['--fault', `set:load.ohm.${name}=1`], ['--fault', `set:load.${name}.polluted=1`],
    ['--fault', `hold:${name}=x`], ['--fault', name], [`--${name}`, 'x'],
  ])('is refused as %s %s, with what is valid', async (option, value) => {
    expectRefused(await runOn(JSON.stringify(PLAIN), 'solve', option, value))
    expect(({} as Loose).polluted).toBeUndefined()
  })

  test('is no point, no wire and no command', async () => {
    for (const more of [['--volts', name, 'body'], ['--ohms', `load:${name}`, 'body'], ['--amps', name]]) expectRefused(await runOn(JSON.stringify(PLAIN), 'meter', ...more))
    expectRefused(await run(name))
  })
})

function expectRefused({ code, printed, said }: Ran): void {
  expect([code, printed]).toEqual([2, ''])
  expect(said).not.toBe('')
  expect(judgeWords(said)).toEqual([])
}

describe('numbers', () => {
  const withOhm = (text: string) => JSON.stringify(PLAIN).replace('"ohm":6', `"ohm":${text}`)

  test.each([
    ['1e999', 'a number too large to count with'], ['-1e999', 'a number too large to count with'], ['1e308', '1e+308'], ['1e-300', '1e-300'], ['-1', '-1'],
  ])('%s is refused as the ohms of a part', (text, received) => {
    expect(problemsOf(withOhm(text)).map(({ path }) => path)).toContain('parts.load.params.ohm')
    expect(problemsOf(withOhm(text))[0].sentence).toContain(`found ${received}.`)
  })

  test('-0 is 0', () => {
    expect(readRecord(withOhm('-0'), partKinds)).toEqual(readRecord(withOhm('0'), partKinds))
  })

  test('NaN, 0x10, 01 and +1 are not JSON', () => {
    for (const text of ['NaN', '0x10', '01', '+1', '.5', 'Infinity']) expect(problemsOf(withOhm(text))).toHaveLength(1)
  })
})

test('keys written twice are told wherever they stand', () => {
  const text = DEMO.toString().replace('"systemV"', '"systemV": 6, "systemV"').replace('"title"', '"title": "x", "title"')
  expect(problemsOf(text).filter(({ sentence }) => sentence.includes('is written twice'))).toHaveLength(2)
})

test('names that cannot be seen are shown in quotes', () => {
  const sentences = (key: string) => problemsOf(JSON.stringify({ ...PLAIN, [key]: 1 })).map(({ sentence }) => sentence)
  expect(sentences('')[0]).toMatch(/^"": "" is not known here; there are format, version, /)
  expect(sentences('\u202Ea\u001b[2J')[0]).toContain('"\\u202ea\\u001b[2J": "\\u202ea\\u001b[2J" is not known here; ')
})
