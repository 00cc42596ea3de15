// Published examples of lamps, each built as a record and answered by the product. What a source prints is the
// expectation; where it prints only the inputs, the arithmetic is beside it.
import { expect, test } from 'vitest'
import { prepareCircuit, readOhms } from '../../src/circuit/index.ts'
import { partKinds } from '../../src/parts/index.ts'
import { coldFilament, findLamp, lampExponents, ohmAtTemperature } from '../../src/standards/index.ts'
import { bulb, expectWithin, lamp, onBattery, type Load } from '../builders/on-battery.ts'
import { part } from '../builders/record.ts'

/** A lamp on a stiff battery, through a wire of some ohms. */
const lit = (load: Load, emfV: number, feedOhm = 0) => onBattery({ emfV, ohm: 0 }, [load], feedOhm)

// Source: Wikipedia, Lamp rerating, after the Standard Handbook for Electrical Engineers, 1978. 5 % over-voltage: current
// x 1.027, power x 1.081, light x 1.18 within 1 %, life x 0.56 to 0.46; a site on lamp technology: life about halves.
// The source's exponents do not agree with each other: current 0.55 makes power 1.55, and that is x 1.0786, not 1.6.
test('5 % over-voltage gives 18 % more light', () => {
  const lampAt = (volts: number) => {
    const { elements, lamps } = lit(lamp('lamp', 24, 12), volts).solve().solved
    return { amps: elements.lamp.amps!, watts: elements.lamp.amps! * elements.lamp.volts!, light: lamps.lamp.light }
  }
  const rated = lampAt(12), over = lampAt(12.6)
  expectWithin(over.amps / rated.amps, 1.027, 0.05)
  expectWithin(over.watts / rated.watts, 1.0786, 0.01)
  expectWithin(over.watts / rated.watts, 1.081, 0.25)
  expectWithin(over.light / rated.light, 1.18, 1)
  for (const life of [lampExponents.life.value, lampExponents.life.toValue, lampExponents.lifeSite.value]) {
    expect(1.05 ** life).toBeGreaterThanOrEqual(0.45)
    expect(1.05 ** life).toBeLessThanOrEqual(0.57)
  }
})

// Source: a site on lamp technology: 1 % less volts is about 3.5 % less light. Tolerance 0.3 per cent points.
// 24 W at 12 V take 2 x 0.99^0.55 = 1.989 A at 11.88 V, so that 60.33 mΩ lose the 0.12 V.
test('1 % less volts is 3.5 % less light', () => {
  const { volts, percent, light } = lit(lamp('lamp', 24, 12), 12, 0.06033).solve().solved.lamps.lamp
  expectWithin(volts, 11.88, 0.01)
  expectWithin(percent, 99, 0.01)
  expect(Math.abs(100 * (1 - light) - 3.5)).toBeLessThanOrEqual(0.3)
})

/** Rated lumens of a category's filament on 12 V. */
function ratedLm(name: string, filament: 'single' | 'main'): number {
  const found = findLamp(name, { voltsV: 12, filament })
  if (!found.ok || found.filaments[0].fluxLm === null) throw new RangeError(`no lumens for ${name}`)
  return found.filaments[0].fluxLm
}

// Source: worked out for this project; P21W figures, 26.5 W and 460 lm at 13.5 V, from memory of UN R37.
// 1.963 A x (12/13.5)^0.55 = 1.840 A; 22.1 W, or 21.9 W by the power's own exponent 1.6; 460 x (12/13.5)^3.4 = 308 lm. Its
// tolerance is 2 %; the sums are the product's own law and are held closer.
test('P21W on 12.0 V takes 1.84 A for 308 lm', () => {
  const { elements, lamps } = lit(bulb('stop', 'P21W'), 12).solve().solved
  const { volts, amps } = elements.stop
  expectWithin(amps, 1.84, 0.1)
  expect(volts! * amps!).toBeGreaterThan(21.9)
  expect(volts! * amps!).toBeLessThan(22.1)
  expectWithin(lamps.stop.light * ratedLm('P21W', 'single'), 308, 0.2)
})

// Source: EN 60809, data sheet H4, as quoted on a page about lighting, inputs only: 1650 lm at 13.2 V; 12.0 V at the lamp. By
// the exponents of 5 % over-voltage, light x 0.723, 1193 lm (3.4), or x 0.716, 1182 lm (3.5). Tolerance 2 %. The main beam's 75 W at
// 13.2 V take 5.392 A at 12.0 V, so that 222.6 mΩ lose the 1.2 V.
test('1.2 V lost leave a main beam 1193 lm', () => {
  const beam = lit(bulb('head', 'H4', { filaments: { main: { from: 'in' } } }), 13.2, 0.2226).solve().solved
  expectWithin(beam.wires['w-feed'].dropV, 1.2, 0.1)
  const { volts, light } = beam.lamps['head.main']
  expectWithin(volts, 12, 0.1)
  expectWithin(light, 0.723, 2)
  expectWithin(light, 0.716, 2)
  const rated = ratedLm('H4', 'main')
  expect(rated).toBe(1650)
  expectWithin(light * rated, 1193, 2)
  expectWithin(light * rated, 1182, 2)
})

/** A lamp's ohms: lit at these volts, and cold by an ohmmeter with the battery off. */
function hotAndCold(load: Load, emfV: number) {
  const vehicle = lit(load, emfV)
  const { volts, amps } = vehicle.solve().solved.elements.lamp
  const circuit = prepareCircuit(vehicle.wiring, partKinds)
  const { pointOf, reference } = circuit.network
  const atRest = { controls: {}, engine: 'stopped', battery: 'full', phases: {} } as const
  return { hot: volts! / amps!, cold: readOhms(circuit, atRest, pointOf.get('lamp:in') as number, reference).ohm! }
}

// Source: Wikipedia, Incandescent light bulb: 100 W at 120 V has 144 Ω hot, about 9.5 Ω cold, some 15 times less; an
// installation guide: inrush 10 to 15 times; a site on lamp technology: 14 times. Tolerance 5 %.
// Own arithmetic for P21W, 13.5² V²/26.5 W: 6.88 Ω hot, 0.458 Ω cold, 29.4 A of inrush from a stiff source.
test('a cold filament takes 15 times the current', () => {
  const coldRatio = coldFilament.hotOverCold.value
  const mains = hotAndCold(part('lamp', 'lamp', { powerW: 100, ratedV: 120, coldRatio }), 120)
  expectWithin(mains.hot, 144, 5)
  expectWithin(mains.cold, 9.5, 5)
  const stop = hotAndCold(bulb('lamp', 'P21W', { coldRatio }), 13.5)
  expectWithin(stop.hot, 6.88, 0.1)
  expectWithin(stop.cold, 0.458, 0.2)
  expectWithin(13.5 / stop.cold, 29.4, 0.2)
  // Nobody states the ratio: the product's own lies in the published band too.
  const usual = hotAndCold(bulb('lamp', 'P21W'), 13.5)
  expect(usual.hot / usual.cold).toBeGreaterThanOrEqual(coldFilament.inrushBand.value)
  expect(usual.hot / usual.cold).toBeLessThanOrEqual(coldFilament.inrushBand.toValue)
})

// Source: OpenStax College Physics, the filament example: 0.350 Ω at 20 °C, 2850 °C (read); 0.0045/K and the printed 4.8 Ω
// (±0.05) from memory of its chapter 20, not read again. 1 + 0.0045 x 2830 = 13.7 is the lamp's cold ratio.
test('a filament of 0.350 ohm has 4.8 lit', () => {
  const hotOhm = ohmAtTemperature(0.35, 2850, 0.0045)
  const { hot, cold } = hotAndCold(part('lamp', 'lamp', { powerW: 144 / hotOhm, ratedV: 12, coldRatio: hotOhm / 0.35 }), 12)
  expect(Math.abs(hot - 4.8)).toBeLessThanOrEqual(0.05)
  expectWithin(cold, 0.35, 0.1)
  expectWithin(hot / cold, 13.7, 0.5)
})
