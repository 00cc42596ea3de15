import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { layFaults, prepareCircuit, readSolution, readVolts, restCondition, solveSetting, type Circuit, type Fault } from '../../src/circuit/index.ts'
import { InnerSolver, type InnerResult } from '../../src/circuit/inner-solve.ts'
import { LEAST_OHM, LOGGED } from '../../src/circuit/law-table.ts'
import { mergePoints } from '../../src/circuit/topology.ts'
import { partKinds } from '../../src/parts/index.ts'
import { circuitOf, onOff, setting } from '../builders/circuits.ts'
import { editWiring } from '../builders/edited-wiring.ts'
import { link, part, wire, type RecordPlan } from '../builders/record.ts'
import { randomSetting } from '../builders/random-setting.ts'
import { randomVehicle, seededChance } from '../builders/random-vehicle.ts'

const seeds = fc.integer({ min: 1, max: 1_000_000 })

function solve(circuit: Circuit) {
  return solveSetting(circuit, setting(), { skipStanding: true }).solved
}

/** One to four faults on random wires, points and lamps of a circuit: only those that can be written into its wiring as well. */
function randomFaults(circuit: Circuit, seed: number): Fault[] {
  const chance = seededChance(seed + 7)
  const pick = <T>(items: readonly T[]): T => items[Math.floor(chance() * items.length)]
  const { points, wiring } = circuit.network
  // The battery's own leads stay: a network built without its earth lead takes another point for 0 V.
  const wires = [...wiring.wires.keys()].filter((id) => id !== 'wb' && id !== 'we')
  const named = points.filter((point) => !point.includes(':~') && !point.startsWith('battery:') && point !== 'body')
  const lamps = [...wiring.parts.values()].filter(({ kind }) => kind === 'lamp').map(({ id }) => id)
  return Array.from({ length: 1 + Math.floor(chance() * 4) }, (): Fault => {
    const roll = chance()
    if (roll < 0.25) return { kind: 'open', id: pick(wires) }
    if (roll < 0.5) return { kind: 'ohms', id: pick(wires), ohm: 0.1 + 5 * chance() }
    if (roll < 0.65) return { kind: 'join', a: pick(named), b: pick(named) }
    if (roll < 0.9 || lamps.length === 0) return { kind: 'swap', a: pick(named), b: pick(named) }
    return { kind: 'set', part: pick(lamps), param: ['powerW'], value: 2 + 60 * chance() }
  })
}

/** A random vehicle with a switch in every second of its wires. */
function switchedVehicle(seed: number): RecordPlan {
  const plan = randomVehicle(seed)
  const cut = (plan.wires ?? []).filter((_, i) => i % 2 === 0)
  return {
    ...plan,
    parts: [...plan.parts ?? [], ...cut.map(([id]) => part(`s-${id}`, 'control', onOff()))],
    wires: [...(plan.wires ?? []).filter((_, i) => i % 2 === 1), ...cut.flatMap(([id, { ends: [a, b], ...rest }]) => [
      [id, { ...rest, ends: [a, { at: `s-${id}:a` }] as const }] as const, wire(`${id}b`, `s-${id}:b`, String(b.at), { ohm: 0.01 }),
    ])],
  }
}

describe('laws of generated networks', () => {
  it('currents into every node sum to zero', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const { balance } = solve(circuitOf(randomVehicle(seed)))
      expect(balance.worstA).toBeLessThan(1e-8)
    }))
  })

  it('sources give what the rest takes', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const { balance: { sourceW, lostW } } = solve(circuitOf(randomVehicle(seed)))
      expect(Math.abs(sourceW - lostW)).toBeLessThan(1e-6 * (1 + sourceW))
    }))
  })

  it('faults laid on equal a network built with them', () => {
    const met = new Set<string>()
    fc.assert(fc.property(seeds, (seed) => {
      const sound = circuitOf(randomVehicle(seed))
      const faults = randomFaults(sound, seed)
      for (const { kind } of faults) met.add(kind)
      const laid = solve(layFaults(sound, partKinds, faults))
      const rebuilt = solve(prepareCircuit(editWiring(sound.network.wiring, faults), partKinds))
      for (const [point, volts] of Object.entries(laid.voltages)) {
        const other = rebuilt.voltages[point]
        if (volts === null) expect(other ?? null).toBeNull()
        else expect(Math.abs(volts - (other as number))).toBeLessThan(1e-6)
      }
      for (const [wire, { amps }] of Object.entries(laid.wires)) {
        if (amps !== null) expect(Math.abs(amps - (rebuilt.wires[wire].amps as number))).toBeLessThan(1e-4)
      }
    }))
    expect(met.size).toBe(5)
  })

  it('order and names of parts change no answer', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const { wiring } = circuitOf(randomVehicle(seed)).network
      const turned = { ...wiring, parts: new Map([...wiring.parts].reverse()), wires: new Map([...wiring.wires].reverse()) }
      const one = solve(prepareCircuit(wiring, partKinds)), other = solve(prepareCircuit(turned, partKinds))
      for (const [point, volts] of Object.entries(one.voltages)) {
        if (volts !== null) expect(Math.abs(volts - (other.voltages[point] as number))).toBeLessThan(1e-6)
        else expect(other.voltages[point]).toBeNull()
      }
    }))
  })

  it('one answer comes from any start', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const circuit = circuitOf(randomVehicle(seed))
      solveSetting(circuit, setting(), { skipStanding: true })
      const chance = seededChance(seed)
      const { rows, size } = circuit.topology
      const solver = new InnerSolver(circuit.topology, circuit.network.elements.length)
      const answer = solver.solve(circuit.laws)?.volts as Float64Array
      for (let trial = 0; trial < 3; trial++) {
        const start = Float64Array.from({ length: size }, (_, i) => (i === rows ? 0 : 40 * chance() - 20))
        const other = solver.solve(circuit.laws, [], start)?.volts as Float64Array
        for (let i = 0; i < size; i++) expect(Math.abs(other[i] - answer[i])).toBeLessThan(1e-6)
      }
    }))
  })

  it('what was solved before leaves no trace', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const chance = seededChance(seed)
      const plan = switchedVehicle(seed)
      const used = circuitOf(plan)
      for (let i = 0; i < 6; i++) {
        const at = randomSetting(used, chance)
        // Without forgetting: the next solve starts from the last, and follows what has changed.
        used.solveFixed(at, restCondition(used, at))
        const fresh = circuitOf(plan)
        fresh.solveFixed(at, restCondition(fresh, at))
        used.network.points.forEach((_, point) => {
          expect(used.isFloating(point)).toBe(fresh.isFloating(point))
          if (!fresh.isFloating(point)) expect(Math.abs(used.pointVolts(point) - fresh.pointVolts(point))).toBeLessThan(1e-7)
        })
      }
    }))
  })

  it('many contacts that move at once are all followed', () => {
    const lamps = Array.from({ length: 3 * LOGGED }, (_, i) => `lamp${i}`)
    const circuit = circuitOf({
      metals: ['body'],
      parts: [part('battery', 'battery', { emfV: 12.6, ohm: 0.01 }), ...lamps.flatMap((id) => [part(id, 'lamp', { powerW: 5 }), part(`s-${id}`, 'control', onOff())])],
      wires: [link('e', 'battery:-', 'body'), ...lamps.flatMap((id) => [
        wire(`a-${id}`, 'battery:+', `s-${id}:a`, { ohm: 0.01 }), wire(`b-${id}`, `s-${id}:b`, `${id}:in`, { ohm: 0.01 }), link(`c-${id}`, `${id}:out`, 'body'),
      ])],
    })
    const turn = (position: string) => {
      const at = setting(Object.fromEntries(lamps.map((id) => [`s-${id}.p`, position])))
      circuit.solveFixed(at, restCondition(circuit, at))
      return readSolution(circuit, restCondition(circuit, at)).lamps
    }
    for (const position of ['on', 'off', 'on']) {
      for (const lamp of Object.values(turn(position))) expect(lamp.class).toBe(position === 'on' ? 'normal' : 'off')
    }
  })

  it('elements in a row, solved as one, equal the same solved one by one', () => {
    let inner = 0
    fc.assert(fc.property(seeds, (seed) => {
      const circuit = circuitOf(switchedVehicle(seed))
      const at = randomSetting(circuit, seededChance(seed + 1))
      circuit.solveFixed(at, restCondition(circuit, at))
      const { network: { elements, points, reference }, laws, topology } = circuit
      inner += topology.size - 1 - topology.rows
      const merged = Uint8Array.from(elements, (_, e) => (laws.plainS[e] >= 0.999 / LEAST_OHM ? 1 : 0))
      const whole = mergePoints(points.length, reference, elements, merged, () => false)
      const { volts, floating } = new InnerSolver(whole, elements.length).solve(laws) as InnerResult
      points.forEach((_, point) => {
        expect(circuit.isFloating(point)).toBe(floating[whole.nodeOf[point]] === 1)
        if (!circuit.isFloating(point)) expect(Math.abs(circuit.pointVolts(point) - volts[whole.nodeOf[point]])).toBeLessThan(1e-7)
      })
    }))
    expect(inner).toBeGreaterThan(100)
  })

  it('reversing every polarity mirrors the answer', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const plan = randomVehicle(seed)
      const one = solve(circuitOf(plan)), mirrored = solve(circuitOf(reversed(plan)))
      for (const [point, volts] of Object.entries(one.voltages)) {
        const other = mirrored.voltages[turned(point, plan)]
        if (volts === null) expect(other).toBeNull()
        else expect(Math.abs(volts + (other as number))).toBeLessThan(1e-6)
      }
    }))
  })

  // Only lamps with an end on the battery's earth: a lamp between two feeds, like the meter of a bridge, may well
  // brighten as the supply falls, since filaments do not fall alike.
  it('resistance before the battery brightens no lamp on earth', () => {
    let lit = 0
    fc.assert(fc.property(seeds, fc.double({ min: 0.01, max: 2, noNaN: true }), (seed, ohm) => {
      const circuit = circuitOf(randomVehicle(seed))
      const before = solveSetting(circuit, setting(), { skipStanding: true })
      const weak = layFaults(circuit, partKinds, [{ kind: 'ohms', id: 'battery', ohm }])
      weak.solveFixed(setting(), before.condition)
      const after = readSolution(weak, before.condition)
      for (const { id, element } of circuit.network.lamps) {
        const { from, to } = circuit.network.elements[element]
        const { nodeOf, rows } = circuit.topology
        if (nodeOf[from] !== rows && nodeOf[to] !== rows) continue
        if (before.solved.lamps[id].percent > 1) lit++
        expect(after.lamps[id].percent).toBeLessThanOrEqual(before.solved.lamps[id].percent + 1e-3)
      }
    }))
    expect(lit).toBeGreaterThan(10)
  })

  it('a meter of more than a megohm is not loaded by what keeps floating nodes in the matrix', () => {
    fc.assert(fc.property(seeds, fc.double({ min: 1e6, max: 1e8, noNaN: true }), (seed, meterOhm) => {
      const plan = randomVehicle(seed)
      const island: RecordPlan = {
        ...plan, parts: [...plan.parts ?? [], part('cell', 'battery', { emfV: 6, ohm: 0.01 }), part('spare', 'lamp', { powerW: 5 })],
        wires: [...plan.wires ?? [], link('i1', 'cell:+', 'spare:in')],
      }
      const circuit = circuitOf(island)
      const { condition } = solveSetting(circuit, setting(), { skipStanding: true })
      const point = (name: string) => circuit.network.pointOf.get(name) as number
      const read = (a: string, b: string) => readVolts(circuit, setting(), condition, point(a), point(b), meterOhm).volts
      expect(read('spare:out', 'cell:-')).toBeCloseTo(6, 4)
      expect(Math.abs(read('spare:out', 'body'))).toBeLessThan(1e-5)
      expect(Math.abs(read('cell:-', 'battery:+'))).toBeLessThan(1e-5)
    }))
  })
})

/** The same vehicle with the other pole earthed, and every part that has a direction turned round. */
function reversed(plan: RecordPlan): RecordPlan {
  const wires = (plan.wires ?? []).map(([id, { ends, ...more }]) => {
    const at = ends.map((end) => ({ ...end, at: turned(end.at as string, plan) }))
    return [id, { ...more, ends: [at[0], at[1]] }] as const
  })
  return { ...plan, supply: '12+', wires }
}

const OPPOSITE: Readonly<Record<string, string>> = { '+': '-', '-': '+', 'anode': 'cathode', 'cathode': 'anode' }

/** The end that takes a point's place in the reversed vehicle. */
function turned(point: string, plan: RecordPlan): string {
  const [id, end] = point.split(':')
  const kind = plan.parts?.find(([part]) => part === id)?.[1].kind
  return kind === 'battery' || kind === 'diode' ? `${id}:${OPPOSITE[end]}` : point
}
