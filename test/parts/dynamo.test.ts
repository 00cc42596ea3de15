import { describe, expect, it } from 'vitest'
import { IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Params } from '../../src/record/index.ts'

const NAMEPLATE = { ratio: 1, ratedV: 12, ratedA: 20, cutInRpm: 1100, fullOutputRpm: 1800 }

/** A dynamo with its field on its own armature and nothing else to feed; the engine's speed is its own. */
const alone = (params: Params, supply: RecordPlan['supply'] = '12-'): RecordPlan => ({
  supply, metals: ['body'], assume: IDEAL, parts: [part('machine', 'dynamo', { ...NAMEPLATE, ...params })],
  wires: [link('f', 'machine:D', 'machine:F'), link('c', 'machine:case', 'body')],
})
const openV = (params: Params, rpm: number, supply?: RecordPlan['supply']) => solved(alone(params, supply), setting({}, { engine: rpm })).voltages['machine:D']!

/** Cut-in volts of a 12 V set: 12.8 V in US Army TM 5-3820-233-35/1. */
const CUT_IN_V = 12.8

describe('a dynamo', () => {
  it.each([[12, '12-'], [6, '6-']] as const)('of %s V reaches its cut-in volts at cut-in speed', (ratedV, supply) => {
    expect(Math.abs(openV({ ratedV }, 1100, supply) / (CUT_IN_V * ratedV / 12) - 1)).toBeLessThan(0.05)
  })

  it.each([[12, 20, '12-'], [6, 28, '6-'], [6, 2, '6-']] as const)('of %s V and %s A gives them at full-output speed', (ratedV, ratedA, supply) => {
    // Into a battery that holds the regulated volts, 14.3 V on 12 V (the same manual), the field on the armature.
    const { parts, wires, ...rest } = alone({ ratedV, ratedA }, supply)
    const plan = {
      ...rest, parts: [...parts!, part('battery', 'battery', { emfV: 14.3 * ratedV / 12, ohm: 0, counterVPerCell: 1, chargeOhm: 1e-4 })],
      wires: [...wires!, link('out', 'machine:D', 'battery:+'), link('e', 'battery:-', 'body')],
    }
    expect(Math.abs(solved(plan, setting({}, { engine: 1800 })).wires.out.amps! / ratedA - 1)).toBeLessThan(0.03)
  })

  it('does not build up far below its cut-in speed', () => {
    expect(openV({}, 0)).toBeCloseTo(0, 6)
    expect(openV({}, 400)).toBeLessThan(0.2 * CUT_IN_V)
  })

  it('reversed builds up the other way', () => {
    expect(openV({ residual: 'reversed' }, 1100)).toBeCloseTo(-openV({}, 1100), 6)
  })

  it('without residual magnetism gives nothing', () => {
    const { voltages, standing } = solved(alone({ residual: 'none' }), setting({}, { engine: 1100 }))
    expect(voltages['machine:D']).toBeCloseTo(0, 6)
    // Once polarised it would hold.
    expect(standing[0].voltages['machine:D']).toBeGreaterThan(0.8 * CUT_IN_V)
  })

  it('with its field on D waits for F to be earthed', () => {
    const plan = (earthed: boolean): RecordPlan => ({ ...alone({ fieldTo: 'D' }), wires: [link('c', 'machine:case', 'body'), ...(earthed ? [link('f', 'machine:F', 'body')] : [])] })
    const volts = (earthed: boolean) => solved(plan(earthed), setting({}, { engine: 1100 })).voltages['machine:D']!
    expect(volts(false)).toBeLessThan(0.1 * CUT_IN_V)
    expect(volts(true)).toBeCloseTo(openV({}, 1100), 6)
  })
})

/** A dynamo of three brushes and its cut-out on a battery that holds 13.8 V; what earths its field outside has `rateOhm`. */
const threeBrushes = (params: Params = {}, rateOhm = 0, supply: '12-' | '12+' = '12-'): RecordPlan => {
  const [live, earthed] = supply === '12-' ? ['+', '-'] : ['-', '+']
  return {
    supply, metals: ['body'], assume: IDEAL,
    parts: [
      part('machine', 'dynamo', { ratio: 1, thirdBrush: true, ratedA: 20, cutInRpm: 1100, fullOutputRpm: 1800, ...params }), part('rate', 'resistor', { ohm: rateOhm }),
      part('battery', 'battery', { emfV: 13.8, ohm: 0, counterVPerCell: 1, chargeOhm: 1e-4 }),
      part('cutout', 'electromagnet', {
        windings: { shunt: { from: 'D', to: 'E', ohm: 60, turns: 1000 }, series: { from: '~c', to: 'A', ohm: 0.001, turns: 5 } },
        contacts: { main: { from: 'D', to: '~c' } }, pullAt: 213, releaseAt: 190,
      }),
    ],
    wires: [
      link('c', 'machine:case', 'body'), link('f1', 'machine:F', 'rate:a'), link('f2', 'rate:b', 'body'), link('d', 'machine:D', 'cutout:D'), link('ce', 'cutout:E', 'body'),
      link('out', 'cutout:A', `battery:${live}`), link('e', `battery:${earthed}`, 'body'),
    ],
  }
}
const output = (rpm: number, ...of: Parameters<typeof threeBrushes>) => solved(threeBrushes(...of), setting({}, { engine: rpm })).wires.out.amps!

describe('a dynamo of three brushes', () => {
  it('gives the most at its full-output speed, and less beyond it, without a regulator', () => {
    const amps = [900, 1300, 1800, 2200, 3000, 4500].map((rpm) => output(rpm))
    expect(amps[0]).toBeCloseTo(0, 6)
    expect(Math.abs(amps[2] / 20 - 1)).toBeLessThan(0.1)
    expect(Math.max(...amps) / amps[2]).toBeLessThan(1.15)
    expect(amps[1]).toBeLessThan(0.6 * amps[2])
    expect(amps[4]).toBeLessThan(0.95 * amps[3])
    expect(amps[5]).toBeLessThan(0.75 * amps[3])
  })

  it('of half the amps gives half', () => {
    expect(Math.abs(output(1800, { ratedA: 10 }) / output(1800) - 0.5)).toBeLessThan(0.03)
  })

  it('with its field switched through a resistor charges less', () => {
    // The charging switch of the lighting switch: field earthed straight, through 2 Ω, not at all.
    const [full, reduced] = [output(1800), output(1800, {}, 2)]
    expect(reduced / full).toBeGreaterThan(0.4)
    expect(reduced / full).toBeLessThan(0.8)
    const off = solved(threeBrushes(), setting({}, { engine: 1800 }), [{ kind: 'open', id: 'f1' }])
    expect(off.states['cutout.armature']).toBe('released')
    expect(off.wires.out.amps).toBe(0)
  })

  it('keeps its own laws: field volts and amps agree', () => {
    // 3.6 Ω of field by its plate: 0.6 · 12 V over a tenth of 20 A. The brush lies below D, and through 2 Ω outside F lies above earth.
    const { elements, voltages } = solved(threeBrushes({}, 2), setting({}, { engine: 1800 }))
    const fieldA = elements['machine.field'].amps!
    expect(elements['machine.field'].volts).toBeCloseTo(3.6 * fieldA, 4)
    expect(voltages['machine:F']).toBeCloseTo(2 * fieldA, 4)
    expect(elements['machine.third-brush'].volts).toBeGreaterThan(0.4 * voltages['machine:D']!)
  })

  it('without the battery lets its volts run away', () => {
    const lost = solved(threeBrushes(), setting({}, { engine: 1800 }), [{ kind: 'open', id: 'battery' }])
    expect(lost.voltages['machine:D']).toBeGreaterThan(20)
  })

  it('with its third brush off gives nothing', () => {
    expect(solved(threeBrushes(), setting({}, { engine: 1800 }), [{ kind: 'open', id: 'machine.third-brush' }]).wires.out.amps).toBe(0)
  })

  it('with its field earthed inside needs no wire on F', () => {
    const { wires, ...plan } = threeBrushes({ fieldTo: 'case' })
    expect(solved({ ...plan, wires: wires!.filter(([id]) => id !== 'f1') }, setting({}, { engine: 1800 })).wires.out.amps).toBeCloseTo(output(1800), 3)
  })

  it('with positive earth is mirrored', () => {
    expect(output(1800, {}, 0, '12+')).toBeCloseTo(-output(1800), 5)
  })
})
