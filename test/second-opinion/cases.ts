import { readFileSync } from 'node:fs'
import { engineRpm, layFaults, prepareCircuit, solveSetting, type Circuit, type Fault, type Setting, type SolvedSetting } from '../../src/circuit/index.ts'
import { partKinds } from '../../src/parts/index.ts'
import { readRecord, resolveVehicle, type Wiring } from '../../src/record/index.ts'
import { fortySettings } from '../builders/forty-settings.ts'
import { makeRecord, mustResolve } from '../builders/record.ts'
import { WARDEN_OPTIONS, WARDEN_YEARS, wardenWiring } from '../builders/warden.ts'
import { writeNetlist, type Given, type Netlist } from './netlist.ts'
import { randomNetwork } from './random-network.ts'

/** EMFs and regulated resistances that the product found around the inner problem, in the condition's order. */
export type Found = readonly number[]

/** One network in one setting, with what the product says and finds today, and what the simulator reads. */
export interface Case { readonly name: string; readonly solved: SolvedSetting; readonly found: Found; readonly netlist: Netlist }

const KEY = { 'switch-box.key': 'on' }, HEAD = { 'switch-box.lights': 'head' }, PARK = { 'switch-box.lights': 'parking' }
const BRAKE = { 'brake-switch.pedal': 'pressed' }, HORN = { 'horn-button.press': 'pressed' }, WIPE = { 'wiper-switch.pull': 'on' }, DOOR = { 'door-switch.door': 'open' }
const MAIN = { 'dip-switch.beam': 'main' }, LEFT = { 'turn-switch.lever': 'left' }

type Plan = readonly [controls: Setting['controls'], engine?: Setting['engine'], battery?: Setting['battery'], faults?: readonly Fault[]]

/** Settings of both editions; those that name the turn switch are for the later one. */
const PLANS: readonly Plan[] = [
  [{}], [KEY], [PARK], [HEAD], [{ ...HEAD, ...MAIN }], [{ ...KEY, ...BRAKE }], [{ ...KEY, ...BRAKE, ...PARK }], [HORN], [{ ...KEY, ...WIPE }], [DOOR],
  [{ ...KEY, ...HEAD, ...BRAKE, ...HORN, ...WIPE, ...DOOR }], [KEY, 'stopped-open'], [KEY, 'idle'], [{ ...KEY, ...HEAD }, 'idle'], [KEY, 'cruise'], [{ ...KEY, ...HEAD }, 'cruise'],
  [{ ...KEY, ...HEAD, ...MAIN, ...BRAKE, ...WIPE }, 'cruise'], [{ ...KEY, ...HEAD }, 'stopped', 'low'], [{ ...KEY, ...HEAD, ...BRAKE }, 'idle', 'low'],
  [{ ...KEY, ...BRAKE }, 'stopped', 'full', [{ kind: 'open', id: 'left-wing-bolts' }]], [{ ...KEY, ...BRAKE, ...PARK }, 'stopped', 'full', [{ kind: 'open', id: 'left-wing-bolts' }]],
  [{ ...KEY, ...HEAD }, 'cruise', 'full', [{ kind: 'ohms', id: 'battery', ohm: 0.1 }]], [{ ...KEY, ...HEAD }, 'stopped', 'full', [{ kind: 'ohms', id: 'left-wing-bolts', ohm: 2 }]],
]
const LATER: readonly Plan[] = [[{ ...KEY, ...LEFT }], [{ ...KEY, ...LEFT, ...HEAD, ...BRAKE }, 'idle'], [{ ...KEY, ...LEFT }, 'stopped', 'full', [{ kind: 'open', id: 'left-wing-bolts' }]]]

/** The demo vehicle in its two editions: more than forty settings. The simulator is given what was `found` when its answers were recorded, else what is found today. */
export function demoCases(found: ReadonlyMap<string, Found> = new Map()): Case[] {
  const read = readRecord(readFileSync(new URL('../../examples/vehicles/tessarby-errand.json', import.meta.url), 'utf8'), partKinds)
  if (!read.ok) throw new Error('the demo cannot be read')
  return [1954, 1961].flatMap((year) => {
    const resolved = resolveVehicle(read.record, { year }, partKinds)
    if (!resolved.ok) throw new Error(`the demo of ${year} cannot be resolved`)
    return (year < 1958 ? PLANS : [...PLANS, ...LATER]).map((plan) => makeCase(`${year} ${JSON.stringify(plan)}`, resolved.wiring, plan, found))
  })
}

/** The main demo vehicle with all its options: the forty settings of each edition whose figures are on record as goldens. */
export function wardenCases(found: ReadonlyMap<string, Found> = new Map()): Case[] {
  return WARDEN_YEARS.flatMap((year) => {
    const wiring = wardenWiring(year, WARDEN_OPTIONS)
    return fortySettings(prepareCircuit(wiring, partKinds), { 'key.key': 'on' }, year)
      .map(({ controls, engine, battery }, i) => makeCase(`${year}, setting ${i + 1}`, wiring, [controls, engine, battery], found))
  })
}

/** Generated networks of up to 300 nodes. */
export function randomCases(count: number, found: ReadonlyMap<string, Found> = new Map()): Case[] {
  return Array.from({ length: count }, (_, i) => {
    const wiring = mustResolve(makeRecord(randomNetwork(i + 1)), {}, partKinds)
    return makeCase(`network ${i + 1}`, wiring, [{}], found)
  })
}

function makeCase(name: string, wiring: Wiring, [controls, engine = 'stopped', battery = 'full', faults = []]: Plan, found: ReadonlyMap<string, Found>): Case {
  const circuit = layFaults(prepareCircuit(wiring, partKinds), partKinds, faults)
  const setting: Setting = { controls, engine, battery, phases: {} }
  const { solved, condition } = solveSetting(circuit, setting, { skipStanding: true })
  const own = [...condition.emf, ...condition.regulatorOhm]
  const recorded = found.get(name)
  const given: Given = {
    solved, condition: recorded ? { ...condition, emf: Float64Array.from(recorded.slice(0, condition.emf.length)), regulatorOhm: Float64Array.from(recorded.slice(condition.emf.length)) } : condition,
    machines: namesOf(circuit, circuit.network.machines), regulators: namesOf(circuit, circuit.network.regulators), engineRpm: engineRpm(engine, wiring.engine),
  }
  return { name, solved, found: own, netlist: writeNetlist(faulty(wiring, faults), given) }
}

function namesOf({ network }: Circuit, items: readonly { part: number; spec: { id: string } }[]): string[] {
  return items.map(({ part, spec }) => `${network.parts[part].id}.${spec.id}`)
}

/** Faults written into the wiring itself, for the simulator: the product lays them on its network instead. */
function faulty(wiring: Wiring, faults: readonly Fault[]): Wiring {
  return faults.reduce((now, fault): Wiring => {
    if (fault.kind !== 'open' && fault.kind !== 'ohms') throw new Error(`the second opinion lays no ${fault.kind}`)
    const fixing = now.fixings.get(fault.id), part = now.parts.get(fault.id)
    if (fixing && fault.kind === 'open') return { ...now, fixings: new Map([...now.fixings].filter(([id]) => id !== fault.id)) }
    const ohm = fault.kind === 'open' ? Infinity : fault.ohm
    if (fixing) {
      const before = typeof fixing.ohm === 'number' ? fixing.ohm : 0.001
      return { ...now, fixings: new Map([...now.fixings].map(([id, one]) => [id, id === fault.id ? { ...one, ohm: before + ohm } : one])) }
    }
    // More resistance in a battery is more resistance: charging and discharging alike.
    if (part?.kind === 'battery') return { ...now, parts: new Map([...now.parts].map(([id, one]) => [id, id === fault.id ? { ...one, params: { ...one.params, addedOhm: ohm } } : one])) }
    throw new Error(`the second opinion lays no fault on ${fault.id}`)
  }, wiring)
}
