import { Circuit } from './circuit.ts'
import type { Condition } from './condition.ts'
import { lampResult } from './lamp-result.ts'
import { batteryPosts, type NetElement, type Network } from './network.ts'
import { readSolution, tidy } from './read-solution.ts'
import { restCondition, settle } from './settle.ts'
import type { LampResult, Setting, Solution } from './solved.ts'

/** Input resistance of a digital meter, ohm. Common practice, no source. */
export const METER_OHM = 1e7
/** Above this an ohmmeter shows an open circuit: more than any old vehicle's insulation would let it tell. */
const OPEN_OHM = 1e8

export interface VoltsReading {
  readonly volts: number
  /** What the meter itself lets through. */
  readonly amps: number
  /** What the two points read without a meter; null where one of them floats. */
  readonly withoutMeterV: number | null
  /** All that holds with the meter in place. */
  readonly metered: Solution
}

/**
 * What a voltmeter of its own resistance shows from one point to another once everything has come to rest
 * with it in place. A meter of 10 MΩ shows ghost volts through an open circuit, just as here.
 */
export function readVolts(circuit: Circuit, setting: Setting, condition: Condition, from: number, to: number, meterOhm = METER_OHM): VoltsReading {
  circuit.solveFixed(setting, condition)
  const floats = circuit.isFloating(from) || circuit.isFloating(to)
  const withoutMeterV = floats ? null : tidy(circuit.pointVolts(from) - circuit.pointVolts(to))
  const { network, overlay } = circuit
  const metered = new Circuit(network, { ...overlay, bridges: [...overlay.bridges, { from, to, ohm: meterOhm }] }, circuit)
  const settled = settle(metered, setting, condition)
  const volts = metered.pointVolts(from) - metered.pointVolts(to)
  return { volts: tidy(volts), amps: volts / meterOhm, withoutMeterV, metered: readSolution(metered, settled.condition) }
}

/** Ohms, null where nothing joins the two points; and the ids of what the ohmmeter's current goes through. */
export interface OhmsReading { readonly ohm: number | null; readonly carrying: ReadonlySet<string> }

/** Ohms between two points with the batteries off, the engine stopped and every filament cold. */
export function readOhms(circuit: Circuit, setting: Setting, from: number, to: number): OhmsReading {
  const { network, overlay } = circuit
  const batteries = network.elements.flatMap((element, e) => (element.part >= 0 && network.parts[element.part].posts ? [e] : []))
  const dead = new Circuit(network, { ...overlay, opened: new Set([...overlay.opened, ...batteries]) }, circuit)
  const stopped: Setting = setting.engine === 'stopped-open' ? setting : { ...setting, engine: 'stopped' }
  dead.solveFixed(stopped, restCondition(dead, stopped))
  const test = dead.restTest(from, to)
  if (!test || test.ohm > OPEN_OHM) return { ohm: null, carrying: new Set() }
  const through = network.elements.filter((_, e) => test.share(e) > LEAST_SHARE)
  return { ohm: test.ohm, carrying: new Set(through.map(({ id, part }) => (part < 0 ? id : network.parts[part].id))) }
}

/** Less of the ohmmeter's current than this moves no figure of the reading. */
const LEAST_SHARE = 1e-3

export interface SeriesLampReading { readonly lamp: LampResult; readonly amps: number; readonly circuit: Circuit; readonly condition: Condition }

/**
 * A lamp put in series with the battery's live lead, as before first power: how bright it is, what flows, and
 * the whole circuit behind it. Dark means that nothing draws; full brightness, a short circuit.
 */
export function readSeriesLamp(circuit: Circuit, setting: Setting, watts: number): SeriesLampReading {
  const { network } = circuit
  const { systemV } = network.wiring
  const added = withSeriesLamp(network, watts, systemV)
  const bridges = circuit.overlay.bridges.map((bridge) => ({ ...bridge, from: added.move(bridge.from), to: added.move(bridge.to) }))
  const behind = new Circuit(added.network, { ...circuit.overlay, bridges })
  const { condition } = settle(behind, setting, restCondition(behind, setting))
  const amps = behind.elementAmps(added.lamp)
  const { from, to } = added.network.elements[added.lamp]
  const volts = Math.abs(behind.pointVolts(from) - behind.pointVolts(to))
  return { lamp: lampResult(tidy(volts), systemV), amps: tidy(Math.abs(amps)), circuit: behind, condition }
}

/** Everything outside the battery moves from its live post to a new point, and the lamp joins the two. */
function withSeriesLamp(network: Network, watts: number, systemV: number): { network: Network; lamp: number; move: (end: number) => number } {
  const battery = network.parts.find(({ posts }) => posts), posts = batteryPosts(network)
  if (!battery || !posts) throw new RangeError('this vehicle has no battery to put a lamp before')
  const post = posts.live
  const point = network.points.length
  const move = (end: number) => (end === post ? point : end)
  const own = new Set(battery.elements.values())
  const elements = network.elements.map((element, e): NetElement =>
    (own.has(e) ? element : { ...element, from: move(element.from), to: move(element.to) }))
  elements.push({
    id: 'series-lamp', from: post, to: point, does: 'load', part: -1,
    law: { kind: 'filament', ratedV: systemV, ratedW: watts, coldRatio: 12 },
  })
  const name = `${network.points[post]} behind the lamp`
  return {
    move, lamp: elements.length - 1,
    network: { ...network, elements, points: [...network.points, name], pointOf: new Map([...network.pointOf, [name, point]]) },
  }
}
