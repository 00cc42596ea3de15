import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { makeFuseBox, makeLampAndSwitch, makeSharedEarth } from '../../test/builders/small-records.ts'
import { makeTessarby } from '../../test/builders/tessarby.ts'
import type { Setting } from '../circuit/index.ts'
import { findOverlaps } from '../draw/index.ts'
import type { WiringRecord } from '../record/index.ts'
import { listChecks } from './live-checks.ts'
import { factsOf } from './live-facts.ts'
import { openLive, panelAxes, redrawLive, sayLit, sayOfSetting, solveLive, type LiveVehicle } from './live-vehicle.ts'
import { firstVehicle, readChoices } from './vehicle-choices.ts'

const rest: Setting = { controls: {}, engine: 'stopped', battery: 'full', phases: {} }
const sheet = { width: 900, height: 700 }

function open(record: WiringRecord): LiveVehicle {
  const opened = openLive(JSON.stringify(record), null, sheet)
  if (!opened.ok) throw new Error(opened.sentences.join('\n'))
  return opened.live
}

test('a damaged record is refused with every problem and its path', () => {
  const opened = openLive(JSON.stringify({ ...makeLampAndSwitch(), parts: { lamp: { kind: 'lmap', title: 'Lamp' } } }), null, sheet)
  expect(opened.ok).toBe(false)
  if (!opened.ok) expect(opened.sentences.some((sentence) => sentence.startsWith('parts.lamp'))).toBe(true)
})

test('the controls nearest the supply come first', () => {
  expect(panelAxes(open(makeTessarby())).map(({ key }) => key).slice(0, 3)).toEqual(['key.turn', 'light.pull', 'dip.foot'])
})

const examples = join(import.meta.dirname, '../../examples/vehicles')

test.each(readdirSync(examples).filter((name) => name.endsWith('.json')))('%s draws in every edition, whole and by circuit, with no overlap', (name) => {
  const text = readFileSync(join(examples, name), 'utf8')
  const first = openLive(text, null, sheet)
  if (!first.ok) throw new Error(first.sentences.join('\n'))
  const { choices, vehicle } = first.live
  const vehicles = choices.years.length > 0 ? choices.years.map(({ year }) => ({ ...vehicle, year })) : [vehicle]
  for (const one of vehicles) {
    const opened = openLive(text, one, sheet)
    if (!opened.ok) throw new Error(opened.sentences.join('\n'))
    const { solved } = solveLive(opened.live, { ...rest, engine: 'cruise' })
    for (const circuit of [null, ...opened.live.scene.circuits]) {
      const { scene } = redrawLive(opened.live, { width: 380, height: 500 }, circuit)
      expect(findOverlaps(scene, solved), `${one.year} ${circuit}`).toEqual([])
    }
  }
})

test('what is lit is said in a sentence', () => {
  const live = open(makeLampAndSwitch())
  expect(sayLit(live, solveLive(live, rest).solved)).toBe('Nothing is lit.')
  expect(sayLit(live, solveLive(live, { ...rest, controls: { 'switch.lever': 'on' } }).solved)).toMatch(/^Lit, in per cent of rated volts: Lamp 10\d %\.$/)
})

test('flashing lamps are shown at the lit moment', () => {
  const live = open(makeTessarby())
  const { solved } = solveLive(live, { ...rest, controls: { 'key.turn': 'on', 'stalk.turn': 'left' } })
  expect(solved.lamps.fl.class).toBe('normal')
  expect(sayOfSetting(live, solved).more.join(' ')).toContain('60 to 120 a minute')
  expect(sayLit(live, solved)).toMatch(/Flashing, 60 to 120 a minute: .*front.*left/i)
  expect(factsOf(live, solved, { kind: 'part', id: 'fl' })?.judgement).toBe('Flashes, 60 to 120 a minute; burns as it should while it is lit.')
})

test('a wire tells its volts, amps and drop', () => {
  const live = open(makeLampAndSwitch())
  const { solved } = solveLive(live, { ...rest, controls: { 'switch.lever': 'on' } })
  const facts = factsOf(live, solved, { kind: 'wire', id: 'w2' })
  expect(facts).toMatchObject({ title: 'red with white, 1.0 mm²', under: 'switch 2 to lamp in · 900 mm' })
  expect(facts?.rows.find(({ name }) => name === 'Current')?.said).toBe(`${solved.wires.w2.amps!.toFixed(2)} A`)
  const copper = facts?.rows.find(({ name }) => name === 'Copper')
  expect(copper?.said).toMatch(/^\d+(\.\d+)? mΩ$/)
  expect(copper?.source).toContain('ISO 6722')
  expect(facts?.judgement).toMatch(/^Carries 1\.\d\d A from switch 2 to lamp in\.$/)
})

test('a wire tells its copper, its joints and their sum', () => {
  const live = open(makeLampAndSwitch())
  const rows = factsOf(live, solveLive(live, rest).solved, { kind: 'wire', id: 'w2' })!.rows.filter(({ said }) => said.endsWith('mΩ'))
  expect(rows.map(({ name }) => name)).toEqual(['Copper', 'Joint at switch 2', 'Joint at lamp in', 'Together'])
  const [copper, first, second, all] = rows.map(({ said }) => parseFloat(said))
  expect(Math.abs(all - copper - first - second)).toBeLessThan(0.02)
  const { ohm } = live.circuit.network.elements.find(({ id }) => id === 'w2')!.law as { ohm: number }
  expect(all).toBeCloseTo(ohm * 1000, 1)
})

test('a lamp that is fed and has lost its earth says so', () => {
  const record = makeLampAndSwitch()
  const { w3: _, ...wires } = record.wires!
  const live = open({ ...record, wires })
  const judge = (position: string) => factsOf(live, solveLive(live, { ...rest, controls: { 'switch.lever': position } }).solved, { kind: 'part', id: 'lamp' })?.judgement
  expect(judge('on')).toMatch(/^Fed with 1\d\.\d\d V, but nothing flows: its earth side has no way to earth/)
  expect(judge('off')).toBe('Off in this setting.')
  expect(listChecks(live)).toEqual([{ said: 'Nothing is joined to', why: 'unused, or a wire or an earth is missing', picks: [{ pick: { kind: 'part', id: 'lamp' }, said: 'lamp out' }] }])
})

test('a battery joined from post to post is told with every wire on the way', () => {
  const record = makeLampAndSwitch()
  const live = open({ ...record, wires: { ...record.wires, w9: { ends: [{ at: 'battery:+' }, { at: 'frame' }] } } })
  expect(listChecks(live)[0].said).toBe('Battery is short-circuited, from post to post with no load between, through')
  expect(listChecks(live)[0].picks.map(({ pick }) => `${pick.kind} ${pick.id}`)).toContain('wire w9')
  expect(sayOfSetting(live, solveLive(live, rest).solved).told.join(' ')).toContain('short-circuited')
})

test('that all is switched off is no bad news', () => {
  const live = open(makeLampAndSwitch())
  expect(sayOfSetting(live, solveLive(live, rest).solved)).toEqual({ told: [], more: [expect.stringContaining('No current flows')] })
})

test('a blown fuse of a box is told by its name, and by its box', () => {
  const live = open(makeFuseBox())
  const { solved } = solveLive(live, rest)
  expect(sayOfSetting(live, solved).told.join(' ')).toContain('has blown its fuse right')
  const facts = factsOf(live, solved, { kind: 'part', id: 'box' })
  expect(facts?.judgement).toMatch(/has blown its fuse right\. Find out why/)
  expect(facts?.rows).toContainEqual({ name: 'Fuse right', said: 'blown' })
  expect(facts?.rows).toContainEqual({ name: 'Fuse left', said: 'whole' })
  expect(factsOf(live, solved, { kind: 'part', id: 'volts' })?.judgement).toMatch(/^Shows 1\d(\.\d)? V\.$/)
})

test('rows of facts go by titles and markings, none twice', () => {
  const live = open(makeTessarby())
  const { solved } = solveLive(live, { ...rest, controls: { 'key.turn': 'on', 'stalk.turn': 'left' } })
  for (const id of live.wiring.parts.keys()) {
    const names = factsOf(live, solved, { kind: 'part', id })!.rows.map(({ name }) => name)
    expect(names.filter((name, i) => names.indexOf(name) < i), id).toEqual([])
    expect(names.filter((name) => /\w\.\w/.test(name)), id).toEqual([])
  }
})

test('a wire that hangs free has no volts', () => {
  const live = open(makeSharedEarth())
  const facts = factsOf(live, solveLive(live, rest).solved, { kind: 'wire', id: '7' })
  expect(facts?.judgement).not.toBe('')
  expect(factsOf(live, solveLive(live, rest).solved, { kind: 'wire', id: 'none' })).toBeNull()
})

test('years without a wiring are no choice', () => {
  const record = makeLampAndSwitch()
  const supply = { supply: { ...record.supply.supply, fits: [{ years: { from: 1951, to: 1960 } }] } }
  expect(readChoices({ ...record, supply }).years.map(({ said }) => said)).toEqual(['1951 to 1960'])
})

test('years between which the record changes become choices', () => {
  const record = makeLampAndSwitch()
  const wires = { ...record.wires, w2: { ...record.wires!.w2, fits: [{ years: { from: 1955, to: 1960 } }] } }
  const choices = readChoices({ ...record, wires })
  expect(choices.years.map(({ said }) => said)).toEqual(['before 1955', '1955 to 1960', '1961 and later'])
  expect(firstVehicle(choices).year).toBe(1954)
})
