// Letter i: a wire that splits at a splice under tape, and a later edition in which the splice is gone.
import { expect, test } from 'vitest'
import { findZero, lampAmps } from './by-hand.ts'
import { openVehicle, readRecordFile } from './open-vehicle.ts'

const record = readRecordFile(new URL('./i-splice-under-tape.json', import.meta.url))
const early = openVehicle(record, { year: 1955 })
const late = openVehicle(record, { year: 1962 })
const on = { controls: { 'switch.pull': 'on' } }

const left = (volts: number) => lampAmps(volts, 12, 5)
const right = (volts: number) => lampAmps(volts, 12, 10)

/** Volts of a lamp that is fed from a point of these volts through this much wire: U = V + R·I(V). */
const lampVolts = (amps: (volts: number) => number, ohm: number, fromV: number) => findZero((v) => v + ohm * amps(v) - fromV, 0, fromV)

/** By hand: the point with both lamps behind it, at which 12.6 V through `feedOhm` leaves what the lamps take. */
function divideByHand(feedOhm: number, leftOhm: number, rightOhm: number) {
  const taken = (point: number) => {
    const leftV = lampVolts(left, leftOhm, point), rightV = lampVolts(right, rightOhm, point)
    return { leftV, rightV, leftA: left(leftV), rightA: right(rightV) }
  }
  const point = findZero((p) => p + feedOhm * (taken(p).leftA + taken(p).rightA) - 12.6, 0, 12.6)
  return { point, ...taken(point) }
}

// Up to 1958: 0.02 Ω in the battery and 0.3 Ω of trunk lie before the splice, 0.1 Ω and 0.2 Ω after it.
const earlyByHand = divideByHand(0.02 + 0.3, 0.1, 0.2)
// From 1959: only the battery's 0.02 Ω is shared; 0.4 Ω and 0.5 Ω are each lamp's own.
const lateByHand = divideByHand(0.02, 0.4, 0.5)

test('three currents at the splice sum to zero', () => {
  const { wires } = early.solve(on).solved
  // Amps are positive from a wire's first end: into the splice by the trunk and by the right wire, out of it by the left one.
  const into = wires['w-trunk'].amps! + wires['w-right-tail'].amps! - wires['w-left-tail'].amps!
  expect(into).toBeCloseTo(0, 8)
  expect(wires['w-trunk'].amps).toBeCloseTo(earlyByHand.leftA + earlyByHand.rightA, 6)
  expect(wires['w-left-tail'].amps).toBeCloseTo(earlyByHand.leftA, 6)
  expect(wires['w-right-tail'].amps).toBeCloseTo(-earlyByHand.rightA, 6)
})

test('the splice carries both lamps over the trunk', () => {
  const { solved } = early.solve(on)
  expect(solved.voltages.split).toBeCloseTo(earlyByHand.point, 6)
  expect(solved.lamps.left.volts).toBeCloseTo(earlyByHand.leftV, 6)
  expect(solved.lamps.right.volts).toBeCloseTo(earlyByHand.rightV, 6)
  // About 5/12 + 10/12 = 1.25 A through 0.3 Ω: some 0.37 V.
  expect(solved.wires['w-trunk'].dropV).toBeCloseTo(0.3 * (earlyByHand.leftA + earlyByHand.rightA), 6)
  expect(solved.wires['w-trunk'].dropV).toBeGreaterThan(0.36)
})

test('the later edition has no splice and two wires', () => {
  expect([...early.wiring.splices.keys()]).toEqual(['split'])
  expect([...late.wiring.splices.keys()]).toEqual([])
  expect([...late.wiring.wires.keys()]).toEqual(['w-battery', 'w-left-own', 'w-right-own'])
  expect(late.wiring.wires.get('w-left-own')?.ends[0].at).toBe(late.wiring.wires.get('w-right-own')?.ends[0].at)
})

test('each later wire carries its own lamp alone', () => {
  const { solved } = late.solve(on)
  expect(solved.wires['w-left-own'].amps).toBeCloseTo(lateByHand.leftA, 6)
  expect(solved.wires['w-right-own'].amps).toBeCloseTo(lateByHand.rightA, 6)
  expect(solved.wires['w-battery'].amps).toBeCloseTo(lateByHand.leftA + lateByHand.rightA, 6)
  expect(solved.lamps.left.volts).toBeCloseTo(lateByHand.leftV, 6)
  expect(solved.lamps.right.volts).toBeCloseTo(lateByHand.rightV, 6)
  // The left lamp no longer shares the drop that the right one makes: 0.3 Ω x 0.85 A, some 0.25 V.
  expect(lateByHand.leftV - earlyByHand.leftV).toBeGreaterThan(0.2)
})

test('one broken wire darkens two lamps or one', () => {
  const trunk = early.solve(on, { faults: [{ kind: 'open', id: 'w-trunk' }] }).solved
  expect(trunk.lamps.left.class).toBe('off')
  expect(trunk.lamps.right.class).toBe('off')
  const own = late.solve(on, { faults: [{ kind: 'open', id: 'w-left-own' }] }).solved
  expect(own.lamps.left.class).toBe('off')
  expect(own.lamps.right.class).toBe('normal')
})

test('half the watts of one bulb change all three currents', () => {
  const { wires } = early.solve(on, { faults: [{ kind: 'set', part: 'right', param: ['powerW'], value: 5 }] }).solved
  const half = (volts: number) => lampAmps(volts, 12, 5)
  const taken = (point: number) => [left(lampVolts(left, 0.1, point)), half(lampVolts(half, 0.2, point))]
  const point = findZero((p) => p + 0.32 * (taken(p)[0] + taken(p)[1]) - 12.6, 0, 12.6)
  const [leftA, rightA] = taken(point)
  expect(wires['w-left-tail'].amps).toBeCloseTo(leftA, 6)
  expect(wires['w-right-tail'].amps).toBeCloseTo(-rightA, 6)
  expect(wires['w-trunk'].amps).toBeCloseTo(leftA + rightA, 6)
  expect(rightA).toBeLessThan(0.52 * earlyByHand.rightA)
})
