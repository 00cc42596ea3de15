// Published examples of lamps that share a feed or an earth, each built as a record and answered by the product.
import { expect, test } from 'vitest'
import { battery, expectWithin, lamp, ohms, openPlan, resistor, type Load } from '../builders/on-battery.ts'
import { fixing, link, type RecordPlan } from '../builders/record.ts'
import type { OpenVehicle } from '../records/open-vehicle.ts'

/** Two lamps between a feed and an earth of these ohms. */
function twoLamps(emfV: number, powerW: number, feedOhm: number, earthOhm: number, supply: RecordPlan['supply'] = '12-'): OpenVehicle {
  return openPlan({
    supply,
    parts: [battery({ emfV, ohm: 0 }), lamp('left', powerW, emfV), lamp('right', powerW, emfV)],
    splices: { feed: {} }, metals: ['body', 'shell'],
    wires: [ohms('w-feed', 'battery:+', 'feed', feedOhm), link('w-left', 'feed', 'left:in'), link('w-right', 'feed', 'right:in')],
    fixings: [
      fixing('f-battery', 'battery:-', 'body', 0), fixing('f-shell', 'shell', 'body', earthOhm),
      fixing('f-left', 'left:out', 'shell', 0), fixing('f-right', 'right:out', 'shell', 0),
    ],
  })
}

// Source: worked out for this project with a power-law lamp; P21W figures from memory of UN R37.
// 0.25 Ω in the common earth of two P21W, 13.5 V and 26.5 W, then 6.75 V and 27.6 W. Tolerance 1 %.
test('one bad earth hurts 6 V far more', () => {
  const twelve = twoLamps(13.5, 26.5, 0, 0.25).solve().solved
  expectWithin(twelve.wires['w-feed'].amps, 3.773, 1)
  expectWithin(twelve.voltages.shell, 0.943, 1)
  expectWithin(twelve.lamps.left.volts, 12.557, 1)
  expectWithin(twelve.lamps.left.light, 0.782, 1)
  const six = twoLamps(6.75, 27.6, 0, 0.25, '6-').solve().solved
  expectWithin(six.wires['w-feed'].amps, 6.944, 1)
  expectWithin(six.voltages.shell, 1.736, 1)
  expectWithin(six.lamps.left.volts, 5.014, 1)
  expectWithin(six.lamps.left.light, 0.364, 1)
})

/** A stop lamp and a tail lamp on a shell without earth: stop feed at 13.5 V, tail feed on the body. */
function lostShell(stop: Load, tail: Load, ends: readonly [string, string]): OpenVehicle {
  const [inEnd, outEnd] = ends
  return openPlan({
    parts: [battery({ emfV: 13.5, ohm: 0 }), stop, tail], metals: ['body', 'shell'],
    wires: [link('w-stop', 'battery:+', `stop:${inEnd}`), link('w-tail', `tail:${inEnd}`, 'body')],
    fixings: [
      fixing('f-battery', 'battery:-', 'body', 0),
      fixing('f-stop', `stop:${outEnd}`, 'shell', 0), fixing('f-tail', `tail:${outEnd}`, 'shell', 0),
    ],
  })
}

// Source: worked out for this project with a power-law lamp. P21W 26.5 W and R5W 5.5 W at 13.5 V, the
// common earth open, the tail feed earthed through next to nothing. Tolerance 2 %.
test('a lost cluster earth feeds back', () => {
  const { lamps, wires } = lostShell(lamp('stop', 26.5, 13.5), lamp('tail', 5.5, 13.5), ['in', 'out']).solve().solved
  expectWithin(wires['w-stop'].amps, 0.395, 2)
  expectWithin(lamps.stop.volts, 0.732, 2)
  expectWithin(lamps.tail.volts, 12.77, 2)
  expect(lamps.stop.class).toBe('off')
  expect(lamps.tail.class).toBe('normal')
  // With fixed hot resistances V²/P the answer would be 0.337 A and 2.32 V.
  const fixed = lostShell(resistor('stop', 13.5 ** 2 / 26.5), resistor('tail', 13.5 ** 2 / 5.5), ['a', 'b']).solve().solved
  expectWithin(fixed.wires['w-stop'].amps, 0.337, 2)
  expectWithin(fixed.elements.stop.volts, 2.32, 2)
})

// Source: worked out for this project with a power-law lamp. 13.2 V, 0.10 Ω of common feed, two H4 main
// beams of 75 W at 13.2 V. Tolerance 1 %.
test('0.10 ohm take 1.08 V from two main beams', () => {
  const { wires, lamps } = twoLamps(13.2, 75, 0.1, 0).solve().solved
  expectWithin(wires['w-feed'].amps, 10.84, 1)
  expectWithin(wires['w-feed'].dropV, 1.084, 1)
  expectWithin(lamps.left.volts, 12.116, 1)
  expectWithin(lamps.right.light, 0.747, 1)
})
