// Letter k: a loom that lies on another route in another edition. Lengths, ohms and drops differ by what the runs differ.
import { expect, test } from 'vitest'
import { measureWires } from '../../src/routes/index.ts'
import { openVehicle, readRecordFile, readRecordText } from './open-vehicle.ts'

const file = new URL('./k-loom-on-two-routes.json', import.meta.url)
const record = readRecordFile(file)
const roof = openVehicle(record, { year: 1961 })
const tunnel = openVehicle(record, { year: 1964 })

// ISO 6722, largest resistance at 20 °C, Ω/km, as printed in cable makers' data sheets (the text of the standard was not read).
const OHM_PER_M = { 2.5: 7.60e-3, 0.75: 24.7e-3 }
const ROOF_MM = 900 + 1400 + 700
const TUNNEL_MM = 2600

/** Both loads hang on the battery's post: E = U + R0·(U/(Rw + Rwindow) + U/(Rp + Rplate)), each with its wire before it. */
function byHand(runMm: number, windowOhm = 1.5) {
  const windowMm = 150 + runMm + 250, plateMm = 100 + runMm + 500
  const windowWire = OHM_PER_M[2.5] * windowMm / 1000, plateWire = OHM_PER_M[0.75] * plateMm / 1000
  const postV = 12.6 / (1 + 0.01 * (1 / (windowWire + windowOhm) + 1 / (plateWire + 24)))
  const windowA = postV / (windowWire + windowOhm), plateA = postV / (plateWire + 24)
  return { windowMm, plateMm, windowWire, plateWire, windowA, plateA, windowDrop: windowA * windowWire, plateDrop: plateA * plateWire }
}

test('the same wire is 400 mm shorter by the tunnel', () => {
  const [over, under] = [measureWires(roof.wiring), measureWires(tunnel.wiring)]
  expect(over.get('w-window')).toMatchObject({ lengthMm: 3400, neededMm: 3400, madeMm: null, runs: ['pillar', 'tube', 'rear-pillar'] })
  expect(under.get('w-window')).toMatchObject({ lengthMm: 3000, neededMm: 3000, madeMm: null, runs: ['tunnel'] })
  for (const wire of ['w-window', 'w-plate']) expect(over.get(wire)!.lengthMm! - under.get(wire)!.lengthMm!).toBe(400)
})

test('400 mm of 2.5 mm2 are 3.04 milliohm', () => {
  const ohm = (vehicle: typeof roof, wire: string) => {
    const { amps, dropV } = vehicle.solve().solved.wires[wire]
    return dropV! / amps!
  }
  // 7.60 mΩ/m x 0.4 m = 3.04 mΩ; 24.7 mΩ/m x 0.4 m = 9.88 mΩ.
  expect(ohm(roof, 'w-window') - ohm(tunnel, 'w-window')).toBeCloseTo(0.00304, 7)
  expect(ohm(roof, 'w-plate') - ohm(tunnel, 'w-plate')).toBeCloseTo(0.00988, 7)
  expect(ohm(roof, 'w-window')).toBeCloseTo(0.00760 * 3.4, 7)
  expect(ohm(tunnel, 'w-plate')).toBeCloseTo(0.0247 * 3.2, 7)
})

test('the drop differs as ohms and amps say', () => {
  const pairs = [[roof, byHand(ROOF_MM)], [tunnel, byHand(TUNNEL_MM)]] as const
  for (const [vehicle, hand] of pairs) {
    const { wires } = vehicle.solve().solved
    expect(wires['w-window'].amps).toBeCloseTo(hand.windowA, 7)
    expect(wires['w-window'].dropV).toBeCloseTo(hand.windowDrop, 7)
    expect(wires['w-plate'].dropV).toBeCloseTo(hand.plateDrop, 7)
  }
  // 8.20 A x 25.84 mΩ = 0.212 V over the roof, 8.22 A x 22.80 mΩ = 0.187 V through the tunnel.
  expect(pairs[0][1].windowDrop).toBeCloseTo(0.2119, 3)
  expect(pairs[1][1].windowDrop).toBeCloseTo(0.1874, 3)
  expect(pairs[0][1].windowDrop - pairs[1][1].windowDrop).toBeCloseTo(0.0245, 3)
})

test('twice the load nearly doubles the difference', () => {
  const drop = (vehicle: typeof roof) =>
    vehicle.solve({}, { faults: [{ kind: 'set', part: 'window', param: ['ohm'], value: 0.75 }] }).solved.wires['w-window'].dropV!
  const hand = byHand(ROOF_MM, 0.75).windowDrop - byHand(TUNNEL_MM, 0.75).windowDrop
  expect(drop(roof) - drop(tunnel)).toBeCloseTo(hand, 7)
  expect(hand / 0.0245).toBeCloseTo(1.92, 1)
})

test('a longer run lengthens only its own edition', () => {
  const longer = readRecordText(JSON.stringify({ ...record, runs: { ...record.runs, tube: { ...record.runs!.tube, lengthMm: 1900 } } }))
  expect(measureWires(openVehicle(longer, { year: 1961 }).wiring).get('w-window')?.lengthMm).toBe(3900)
  expect(measureWires(openVehicle(longer, { year: 1964 }).wiring).get('w-window')?.lengthMm).toBe(3000)
})
