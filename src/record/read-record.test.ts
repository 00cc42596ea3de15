import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fakeKinds } from '../../test/builders/fake-kinds.ts'
import { makeRecord, part, wire } from '../../test/builders/record.ts'
import { sampleRecord } from '../../test/builders/sample-record.ts'
import { COLLECTIONS } from './collections.ts'
import { definitionOf, schemaFor } from './schema-walk.ts'
import { readRecord } from './read-record.ts'
import { canonicalSchema, writeRecord } from './write-record.ts'

type Loose = any // any: these tests write what the types forbid

/** The sample's text with one thing changed, and what reading says of it. */
function problemsAfter(change: (sample: Loose) => void): string[] {
  const sample = structuredClone(sampleRecord())
  change(sample)
  return problemsOf(JSON.stringify(sample))
}

function problemsOf(text: string): string[] {
  const read = readRecord(text, fakeKinds)
  return read.ok ? [] : read.problems.map(({ sentence }) => sentence)
}

test('a record of every collection reads', () => {
  expect(problemsAfter(() => undefined)).toEqual([])
})

test('every map of the schema is a known collection', () => {
  const definition = definitionOf(canonicalSchema)
  const maps = definition.type === 'object' ? Object.keys(definition.shape).filter((key) => definitionOf(schemaFor(definition.shape[key], {})).type === 'record') : []
  expect(maps.sort()).toEqual([...COLLECTIONS].sort())
})

describe('shape', () => {
  test('all problems come at once, with the nearest valid name', () => {
    expect(problemsAfter((sample) => {
      sample.title = 3
      sample.supply.early.systemV = 8
      sample.supply.late.earth = 'negativ'
      sample.parts.tail.kind = 'lmap'
      sample.wires.w1.lenghtMm = 5
      sample.wires.w2.ends[0].tailMm = 'long'
      sample.wires.w3.ends[1].at = 'fornt:1'
    })).toEqual([
      'title: expected a text of at most 2000 letters, found 3.',
      'supply.early.systemV: expected 6, or 12, or 24, or "unknown", found 8.',
      'supply.late.earth: expected one of "negative", "positive", "none", or "unknown", found "negativ"; the nearest is negative.',
      'parts.tail.kind: expected one of battery, lamp, control, relay, found "lmap"; the nearest is lamp.',
      'wires.w1.lenghtMm: lenghtMm is not known here; the nearest is lengthMm.',
      'wires.w2.ends.0.tailMm: expected a number from 0 to 100000, or "unknown", found "long".',
      'wires.w3.ends.1.at: there is no part or connector half fornt; the nearest is front.',
    ])
  })

  test('an unknown parameter is a problem', () => {
    expect(problemsAfter((sample) => { sample.parts.tail.params.powrW = 5 })).toEqual(['parts.tail.params.powrW: powrW is not known here; the nearest is powerW.'])
  })

  test('any entry of a map of parameters may have its own fits', () => {
    const relay = (winding: object) => part('r', 'relay', { windings: { a: winding } })
    const read = (winding: object) => problemsOf(writeRecord(makeRecord({ parts: [relay(winding)] })))
    expect(read({ ohm: 80, fits: [{ years: { from: 1960 } }] })).toEqual([])
    expect(read({ ohm: 80, fits: [] })).toEqual(['parts.r.params.windings.a.fits: expected a list of at least 1, found an empty list.'])
    expect(read({ ohms: 80 })).toContain('parts.r.params.windings.a.ohms: ohms is not known here; the nearest is ohm.')
  })

  test('an object of the wrong shape is named by its own fields', () => {
    expect(problemsAfter((sample) => { sample.wires.w13.ends[1].at = { place: 'boot', state: 'lose' } })).toEqual(
      ['wires.w13.ends.1.at.state: expected one of "unknown", "loose", found "lose"; the nearest is loose.'])
  })

  test('a bad id is refused by its path', () => {
    expect(problemsAfter((sample) => { sample.parts['left lamp'] = { kind: 'lamp', title: '' } })).toEqual(
      ['parts."left lamp": expected an id such as w12 (letters, digits, _ + -, at most 40), found "left lamp".'])
  })

  test('no document at all is one problem', () => {
    for (const text of ['3', 'null', '[]', '"x"']) expect(problemsOf(text)).toHaveLength(1)
  })

  test('a newer version says only that', () => {
    expect(problemsAfter((sample) => { sample.version = 7; sample.parts = 3 })).toEqual(
      ['version: this file was written by a newer version of Loomwright (format 7); this one reads formats up to 1.'])
  })

  test('a hundred problems are shown and all are counted', () => {
    const wires = Array.from({ length: 150 }, (_, i) => wire(`w${i}`, 'battery:x', 'battery:+'))
    const read = readRecord(JSON.stringify(makeRecord({ parts: [part('battery', 'battery')], wires })), fakeKinds)
    expect(read).toMatchObject({ ok: false, count: 150, problems: { length: 100 } })
  })
})

test('a key like no other is told with those that there are', () => {
  expect(problemsAfter((sample) => { sample.wires.w1.carburettor = 1 })).toEqual([expect.stringMatching(/^wires\.w1\.carburettor: carburettor is not known here; there are tag, role, fits, ends, /)])
})

test.each([
  ['blue', '{"base": "blue"}'], ['bar', 'bare'], ['Unknown', 'unknown'],
])('a colour written as %s is told what it would be', (colour, near) => {
  const expected = 'an object such as {"base": "red"}, or "bare", or "unknown"'
  expect(problemsAfter((sample) => { sample.wires.w1.colour = colour })).toEqual([`wires.w1.colour: expected ${expected}, found "${colour}"; the nearest is ${near}.`])
})

describe('references', () => {
  test.each([
    ['a terminal that the part does not have', (s: Loose) => { s.wires.w1.ends[0].at = 'battery:*' }, /wires\.w1\.ends\.0\.at: expected one of battery:\+, battery:-, found "battery:\*"; the nearest is/],
    ["the kind's own name of a renamed end", (s: Loose) => { s.wires.w10.ends[1].at = 'tail:58' }, /expected one of tail:31, tail:L, found "tail:58"/],
    ['a part without its terminal', (s: Loose) => { s.wires.w1.ends[0].at = 'battery' }, /expected one of battery:\+, battery:-, found "battery" without a terminal/],
    ['an end at a part that is not there, and is like none', (s: Loose) => { s.wires.w1.ends[0].at = 'carburettor:1' }, /there is no part or connector half carburettor; there are battery, /],
    ['an unknown splice', (s: Loose) => { s.wires.w2.ends[1].at = 's2' }, /there is no splice or metal s2; the nearest is s1/],
    ['a way that the half does not have', (s: Loose) => { s.wires.w3.ends[1].at = 'front:3' }, /expected one of front:1, front:2, found "front:3"/],
    ['a wrong kind of item', (s: Loose) => { s.wires.w1.loom = 'dash' }, /wires\.w1\.loom: dash is a place, where a loom is needed/],
    ['a wrong place', (s: Loose) => { s.parts.battery.place = 'bot' }, /there is no place bot; the nearest is boot/],
    ['a rename to no end of the kind', (s: Loose) => { s.parts.tail.terminals.L.is = '59' }, /terminals\.L\.is: expected an end of a lamp: 58, 31, found "59"/],
    ['a fixing to nothing', (s: Loose) => { s.fixings.f1.joins[1] = 'bodi' }, /fixings\.f1\.joins\.1: .*the nearest is body/],
    ['a passage that is a place', (s: Loose) => { s.runs.r1.passages = ['boot'] }, /boot is a place, where a passage is needed; there (is|are) /],
    ['a wire from a terminal to itself', (s: Loose) => { s.wires.w1.ends[1].at = 'battery:+' }, /wires\.w1\.ends\.1\.at: both ends of this wire are on battery:\+, so that it joins nothing: correct the end/],
    ['a metal fixed to itself', (s: Loose) => { s.fixings.f2.joins = ['body', 'body'] }, /fixings\.f2\.joins\.1: both ends of this fixing are on body/],
    ['two sizes', (s: Loose) => { s.wires.w1.sizeAwg = '12' }, /wires\.w1\.sizeAwg: a wire has one size, and this one has 2: sizeMm2, sizeAwg/],
    ['an id that stands twice', (s: Loose) => { s.places.w1 = { title: '' } }, /places\.w1: the id w1 is already that of a wire/],
    ['an id that means something else', (s: Loose) => { s.looms.separate = s.looms.main }, /looms\.separate: separate cannot be an id/],
    ['a branch to no point', (s: Loose) => { s.looms.main.branches.b1.to = 'midle' }, /branches\.b1\.to: expected a point of this loom.*the nearest is middle/],
    ['a ring in a loom', (s: Loose) => { s.looms.main.branches.b3 = { from: 'dash-point', to: 'boot-point' } }, /b3: this branch closes a ring/],
    ['a loom in pieces', (s: Loose) => { s.looms.main.points.apart = {} }, /the loom falls into 2 pieces/],
    ['lying of no branch', (s: Loose) => { s.looms.main.lies.l1.branch = 'b9' }, /lies\.l1\.branch: expected a branch of this loom: b1, b2/],
    ['leaving at no point', (s: Loose) => { s.wires.w2.ends[0].leaves = 'x' }, /ends\.0\.leaves: expected a point of the loom main/],
    ['leaving without a loom', (s: Loose) => { s.wires.w10.ends[0].leaves = 'middle' }, /is in no loom/],
    ['an unknown option', (s: Loose) => { s.parts.tow.fits[0].with = ['towbr'] }, /fits\.0\.with\.0: there is no option towbr; the nearest is towbar/],
    ['an unknown option in a row', (s: Loose) => { s.parts.switch.params.rows.head.fits = [{ without: ['frog'] }] }, /rows\.head\.fits\.0\.without\.0: .*the nearest is fog/],
    ['a wrong condition in a row', (s: Loose) => { s.parts.switch.params.rows.head.fits = [{ yaers: {} }] }, /rows\.head\.fits\.0\.yaers: yaers is not known here; the nearest is years/],
    ['years backwards', (s: Loose) => { s.supply.early.fits[0].years = { from: 1970, to: 1960 } }, /1970 comes after 1960/],
    ['a serial of no prefix', (s: Loose) => { s.parts.tow.fits[0].serials = { series: 'chassis', from: 'C 12' } }, /C 12 is no number of the series, which has A, B and a number/],
    ['serials backwards', (s: Loose) => { s.parts.tow.fits[0].serials = { series: 'chassis', from: 'B1', to: 'A 900' } }, /B1 comes after A 900/],
    ['a duty of no part', (s: Loose) => { s.duties.d1.must = ['tial'] }, /duties\.d1\.must\.0: there is no part tial; the nearest is tail/],
    ['a duty at no position', (s: Loose) => { s.duties.d1.when['switch.turn'] = ['sdie'] }, /expected one of off, side, head, found "sdie"; the nearest is side/],
    ['a control without its axis', (s: Loose) => { s.duties.d1.when = { switch: ['side'] } }, /several axes, so say which: switch\.turn, switch\.dim/],
    ['an axis that is not there', (s: Loose) => { s.limits.no1.never = { 'switch.trun': ['off'] } }, /the nearest is turn/],
    ['a state that the engine does not have', (s: Loose) => { s.duties.d1.when.engine = ['crank'] }, /expected one of stopped, stopped-open, cranking/],
    ['a claim about a field that is not there', (s: Loose) => { s.claims.cl1.about[2] = 'sizeMm' }, /claims\.cl1\.about\.2: .*the nearest is sizeMm2/],
    ['a claim about a wire that is not there', (s: Loose) => { s.claims.cl1.about[1] = 'w99' }, /claims\.cl1\.about\.1: there is no wire w99/],
    ['a pair of ways that no half has', (s: Loose) => { s.connectors.c1.ways[1][1] = 'D' }, /connectors\.c1\.ways\.1\.1: expected a way of side b: A, B, C, found "D"/],
    ['a way written twice', (s: Loose) => { s.halves.rear.ways = ['A', 'B', 'B'] }, /halves\.rear\.ways\.2: the way B stands here twice/],
  ])('%s is told', (_name, change, sentence) => {
    const sentences = problemsAfter(change)
    expect(sentences.filter((text) => sentence.test(text)), sentences.join('\n')).toHaveLength(1)
  })

  test('what points to an entry of the wrong shape is left in peace', () => {
    expect(problemsAfter((sample) => { sample.parts.battery.title = 3 })).toHaveLength(1)
  })

  test('names that every object inherits do no harm', () => {
    for (const name of ['__proto__', 'constructor', 'toString']) {
      const text = JSON.stringify(sampleRecord()).replace('"w1":', `"${name}":`)
      expect(problemsOf(text)).toContain(`wires.${name}: ${name} cannot be used as a name.`)
      expect(problemsAfter((sample) => { sample.wires.w1.ends[0].at = `${name}:30` })).toHaveLength(1)
      expect(problemsAfter((sample) => { sample.wires.w1.loom = name; sample.claims.cl1.about = [name, name] })).not.toEqual([])
    }
  })
})

describe('text', () => {
  test('bad JSON is told by line and column', () => {
    expect(problemsOf('{\n  "format": "loomwright-record",\n  "version" 1\n}')).toEqual(
      ['the document: this is not JSON: line 3, column 13: expected a colon, found “1”; in line 3, “"version" 1”, put a colon between the key and its value.'])
  })

  test('a key written twice is a problem', () => {
    const text = writeRecord(sampleRecord()).replace('"w2":', '"w1":')
    expect(problemsOf(text)[0]).toMatch(/^wires\.w1: w1 is written twice, the second time at line \d+, column 5\.$/)
  })

  test('a byte order mark is passed over', () => {
    expect(problemsOf(`\uFEFF${writeRecord(sampleRecord())}`)).toEqual([])
  })

  test('too large or too deep a text is refused by size', () => {
    expect(problemsOf(`"${'x'.repeat(20_000_001)}"`)).toEqual(['the document: expected at most 20 MB of text, found 20.000003 MB.'])
    expect(problemsOf(`"${'ü'.repeat(10_000_001)}"`)).toHaveLength(1)
    expect(problemsOf('['.repeat(1_000_000))).toEqual(['0.0.0.0.0: expected at most 100 levels of nesting, found more.'])
    expect(problemsOf(`${'['.repeat(100)}${']'.repeat(100)}`)[0]).toMatch(/^the document: expected an object/)
  })

  test('damaged texts never throw and never give half a record', () => {
    const text = writeRecord(sampleRecord())
    const place = fc.nat(text.length - 1)
    const damage = fc.oneof(
      place.map((at) => text.slice(0, at)),
      fc.tuple(place, fc.nat(400)).map(([at, length]) => text.slice(0, at) + text.slice(at + length)),
      fc.tuple(place, fc.nat(255)).map(([at, code]) => text.slice(0, at) + String.fromCharCode(code) + text.slice(at + 1)),
      fc.tuple(place, fc.string({ maxLength: 6, unit: 'binary' })).map(([at, more]) => text.slice(0, at) + more + text.slice(at)),
    )
    fc.assert(fc.property(damage, (damaged) => {
      const read = readRecord(damaged, fakeKinds)
      if (read.ok) expect(readRecord(writeRecord(read.record), fakeKinds)).toEqual(read)
      else expect(read.problems.every(({ sentence, expected, received }) => sentence && expected && received)).toBe(true)
    }), { numRuns: 500 })
  })

  test('values of another type anywhere never throw', () => {
    const paths = listPaths(sampleRecord(), [])
    fc.assert(fc.property(fc.constantFrom(...paths), fc.json({ maxDepth: 2 }), (path, json) => {
      const sample = structuredClone(sampleRecord())
      let holder: Loose = sample
      for (const key of path.slice(0, -1)) holder = holder[key]
      holder[path[path.length - 1]] = JSON.parse(json)
      const read = readRecord(JSON.stringify(sample), fakeKinds)
      if (!read.ok) expect(read.problems.every(({ sentence }) => !sentence.includes('undefined'))).toBe(true)
    }), { numRuns: 500 })
  })
})

function listPaths(value: unknown, path: string[]): string[][] {
  if (typeof value !== 'object' || value === null) return [path]
  const inner = Object.entries(value).flatMap(([key, entry]) => listPaths(entry, [...path, key]))
  return path.length === 0 ? inner : [path, ...inner]
}
