import { describe, expect, it } from 'vitest'
import { IDEAL, onOff, setting, solved } from '../../test/builders/circuits.ts'
import { link, part, type RecordPlan } from '../../test/builders/record.ts'

/** Two flashers of one lamp each, and a wiper, all on one switch. */
const plan: RecordPlan = {
  metals: ['body'], assume: IDEAL,
  parts: [
    part('battery', 'battery', { emfV: 12.6, ohm: 0.01 }), part('switch', 'control', onOff()),
    ...['left', 'right'].flatMap((side) => [part(`f-${side}`, 'flasher', { ratedW: 21 }), part(side, 'lamp', { powerW: 21 })]),
    part('wiper', 'wiper', { brushes: { low: {} } }),
  ],
  wires: [
    link('w1', 'battery:+', 'switch:a'), link('e', 'battery:-', 'body'),
    ...['left', 'right'].flatMap((side) => [link(`w-${side}`, 'switch:b', `f-${side}:49`), link(`x-${side}`, `f-${side}:49a`, `${side}:in`), link(`y-${side}`, `${side}:out`, 'body')]),
    link('ww', 'switch:b', 'wiper:low'), link('wo', 'wiper:out', 'body'),
  ],
}

describe('phases', () => {
  it('rest where nothing is live', () => {
    const { phases } = solved(plan)
    expect(phases).toEqual({ 'f-left': { rests: 'dark' }, 'f-right': { rests: 'dark' }, wiper: { rests: 'parked' } })
  })

  it('of parts that are live together are solved in combination', () => {
    const { phases, at, lamps, notes } = solved(plan, setting({ 'switch.p': 'on' }))
    expect(phases['f-left']).toMatchObject({ cycle: ['dark', 'lit'], rate: '60 to 120 a minute' })
    expect(phases.wiper.cycle).toHaveLength(4)
    expect(at['f-left']).toBe('lit')
    expect(lamps.left.class).toBe('normal')
    expect(notes).toEqual([])
  })

  it('beyond 256 combinations are solved part by part, and said', () => {
    const many: RecordPlan = {
      ...plan,
      parts: [...plan.parts ?? [], ...Array.from({ length: 4 }, (_, i) => part(`wiper${i}`, 'wiper', { brushes: { low: {} } }))],
      wires: [...plan.wires ?? [], ...Array.from({ length: 4 }, (_, i) => [link(`m${i}`, 'switch:b', `wiper${i}:low`), link(`n${i}`, `wiper${i}:out`, 'body')]).flat()],
    }
    const { phases, notes } = solved(many, setting({ 'switch.p': 'on' }))
    expect(notes.join()).toContain('256')
    expect(phases.wiper3.cycle).toHaveLength(4)
    expect(phases['f-right'].rate).toBe('60 to 120 a minute')
  })

  it('a held phase stays', () => {
    const { phases } = solved(plan, setting({ 'switch.p': 'on' }), [{ kind: 'hold', part: 'f-left', state: '', value: 'lit' }])
    expect(phases['f-left']).toEqual({ rests: 'lit' })
  })

  it('begin where the setting says', () => {
    const { phases } = solved(plan, setting({}, { phases: { wiper: 'across' } }))
    expect(phases.wiper).toEqual({ rests: 'across' })
  })
})
