// Published examples of starting circuits, each built as a record and answered by the product. What a source prints is
// the expectation; where it prints only the inputs, the arithmetic is beside it.
import { expect, test } from 'vitest'
import type { Fault } from '../../src/circuit/index.ts'
import { starterCableLimit } from '../../src/standards/index.ts'
import { expectWithin, onBattery, resistor } from '../builders/on-battery.ts'
import type { OpenVehicle } from '../records/open-vehicle.ts'

// Source: OpenStax College Physics, the starter problem, with the answers of a solutions page. Tolerance 0.1 %.
// 12.0 V behind 0.0100 Ω, starter 0.0500 Ω. (A battery's least resistance in the product is 0.1 mΩ.)
test('a starter with good joints takes 200 A', () => {
  const { starter } = onBattery({ emfV: 12, ohm: 0.01 }, [resistor('starter', 0.05)]).solve().solved.elements
  expectWithin(starter.amps, 200, 0.1)
  expectWithin(starter.volts, 10, 0.1)
  expectWithin(starter.volts! * starter.amps!, 2000, 0.1)
})

// Source: the same problem, second part: 0.0900 Ω of corrosion in series.
test('a corroded connection leaves it 80 A', () => {
  const { elements, wires, voltages } = onBattery({ emfV: 12, ohm: 0.01 }, [resistor('starter', 0.05)], 0.09).solve().solved
  expectWithin(elements.starter.amps, 80, 0.1)
  expectWithin(elements.starter.volts, 4, 0.1)
  expectWithin(elements.starter.volts! * elements.starter.amps!, 320, 0.1)
  // Own arithmetic: 80 A x 0.09 Ω and 80 A x 0.01 Ω.
  expectWithin(wires['w-feed'].dropV, 7.2, 0.1)
  expectWithin(12 - voltages['battery:+']!, 0.8, 0.1)
})

// Source: a university physics textbook problem, inputs only. 12.5 V behind 0.02 Ω, starter 0.15 Ω, then 0.10 Ω of
// corrosion in series: P = (12.5/0.17)² x 0.15 = 811.0 W, P/P0 = (0.17/0.27)² = 0.3964. Tolerance 0.1 %.
test('corrosion leaves the starter 40 % of its power', () => {
  const watts = (corrosionOhm: number) => {
    const { volts, amps } = onBattery({ emfV: 12.5, ohm: 0.02 }, [resistor('starter', 0.15)], corrosionOhm).solve().solved.elements.starter
    return volts! * amps!
  }
  expectWithin(watts(0), 811, 0.1)
  expectWithin(watts(0.1), 321.5, 0.1)
  expectWithin(watts(0.1) / watts(0), 0.3964, 0.1)
})

/** Volts at the lamps once the starter's resistance is such that it takes just these amps from the vehicle as solved. */
function voltsWithStarter(vehicle: OpenVehicle, starterA: number): number {
  const solveWith = (ohm: number) => {
    const faults: Fault[] = [{ kind: 'set', part: 'starter', param: ['ohm'], value: ohm }]
    return vehicle.solve({}, { faults }).solved.elements
  }
  let low = 0.05, high = 5
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    if (solveWith(middle).starter.amps! > starterA) low = middle
    else high = middle
  }
  return solveWith(low).lamps.volts!
}

// Source: a university physics textbook problem, inputs only. 12.6 V behind 0.080 Ω, lamps of a fixed 5.00 Ω, starter 35.0 A.
// At the shared node V = (12.6 − 0.080 x 35)/(1 + 0.080/5) = 9.6457 V. Tolerance 0.1 %.
test('headlamps fall to 9.65 V while cranking', () => {
  const weak = { emfV: 12.6, ohm: 0.08 }, lamps = resistor('lamps', 5)
  expectWithin(onBattery(weak, [lamps]).solve().solved.elements.lamps.volts, 12.4, 0.1)
  expectWithin(voltsWithStarter(onBattery(weak, [lamps, resistor('starter', 1)]), 35), 9.65, 0.1)
})

// Source: a worked textbook problem on a homework page: 12.49 V, then 10.74 V with the lamps' current held fixed. With a
// shared node it is (12.6 − 0.05 x 35)/(1 + 0.05/5.6) = 10.754 V. Tolerance 0.02 V.
test('headlamps fall to 10.75 V while cranking', () => {
  const fair = { emfV: 12.6, ohm: 0.05 }, lamps = resistor('lamps', 5.6)
  expect(Math.abs(onBattery(fair, [lamps]).solve().solved.elements.lamps.volts! - 12.49)).toBeLessThan(0.02)
  expect(Math.abs(voltsWithStarter(onBattery(fair, [lamps, resistor('starter', 1)]), 35) - 10.754)).toBeLessThan(0.02)
})

// Source: US Army TM 10-3930-671-24, inputs only: a starter cable may lose 0.20 V for each 100 A. 200 A through 2.0 mΩ is
// 0.40 V, just at the limit; 2.1 mΩ is 0.42 V, too much. Tolerance 0.005 V. The starter is such that 200 A flow.
test('2.0 milliohm of cable are allowed, 2.1 not', () => {
  const over = (cableOhm: number) => {
    const starter = resistor('starter', 12 / 200 - 0.01 - cableOhm)
    const { amps, dropV } = onBattery({ emfV: 12, ohm: 0.01 }, [starter], cableOhm).solve().solved.wires['w-feed']
    expectWithin(amps, 200, 0.001)
    expect(Math.abs(dropV! - 200 * cableOhm)).toBeLessThan(0.005)
    return dropV! - starterCableLimit(amps!).maxV
  }
  expect(over(0.002)).toBeCloseTo(0, 6)
  expect(over(0.0021)).toBeCloseTo(0.02, 6)
  expect(over(0.0019)).toBeLessThan(-0.005)
})
