import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { makeLampAndSwitch, makeSharedEarth } from '../../test/builders/small-records.ts'
import { makeTessarby } from '../../test/builders/tessarby.ts'
import type { Setting } from '../circuit/index.ts'
import { findOverlaps } from '../draw/index.ts'
import type { WiringRecord } from '../record/index.ts'
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
  expect(sayLit(live, solveLive(live, { ...rest, controls: { 'switch.lever': 'on' } }).solved)).toMatch(/^Lit: Lamp 10\d %\.$/)
})

test('flashing lamps are shown at the lit moment', () => {
  const live = open(makeTessarby())
  const { solved } = solveLive(live, { ...rest, controls: { 'key.turn': 'on', 'stalk.turn': 'left' } })
  expect(solved.lamps.fl.class).toBe('normal')
  expect(sayOfSetting(live, solved).join(' ')).toContain('60 to 120 a minute')
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
