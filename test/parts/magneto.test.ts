import { describe, expect, it } from 'vitest'
import { IDEAL, onOff, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { EngineState, Fault } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

/** A magneto with its earthing switch: `on` is the position that stops the engine. */
const plan = (params: Params, supply: RecordPlan['supply']): RecordPlan => ({
  supply, metals: ['body'], assume: IDEAL, parts: [part('it', 'magneto', { primaryA: 4, primaryOhm: 0.5, pointsOhm: 0.5, ...params }), part('stop', 'control', onOff())],
  wires: [link('w1', 'it:2', 'stop:a'), link('w2', 'stop:b', 'body'), link('w3', 'it:case', 'body')],
})
const at = (stop: 'off' | 'on', engine: EngineState, params: Params = {}, faults: readonly Fault[] = [], supply: RecordPlan['supply'] = '12-') =>
  solved(plan(params, supply), setting({ 'stop.p': stop }, { engine }), faults)
const sparks = (...args: Parameters<typeof at>) => at(...args).elements['it.points'].amps!
const DEAD = 'nothing makes sparks in this setting, so the engine that is taken to run would stop'

describe('a magneto', () => {
  it('drives its points without a battery', () => {
    // 4 A through 0.5 Ω shorted: 2 V over 0.5 + 0.5 Ω.
    for (const engine of ['cranking', 'idle', 'cruise'] as const) expect(sparks('off', engine)).toBeCloseTo(2, 6)
    expect(at('off', 'cruise').notes).not.toContain(DEAD)
  })

  it('at rest gives nothing', () => {
    expect(sparks('off', 'stopped')).toBeCloseTo(0, 9)
    expect(sparks('off', 'stopped-open')).toBe(0)
  })

  it('of half the amps gives half', () => {
    expect(sparks('off', 'idle', { primaryA: 2 })).toBeCloseTo(1, 6)
    expect(sparks('off', 'idle', { pointsOhm: 1.5 })).toBeCloseTo(1, 6)
    expect(sparks('off', 50, { comesInRpm: 100 })).toBeCloseTo(1, 6)
  })

  it('earthed makes no spark, and the engine cannot be running', () => {
    expect(sparks('on', 'idle')).toBeCloseTo(0, 6)
    expect(at('on', 'idle').notes).toContain(DEAD)
  })

  it('with its earthing wire broken cannot be stopped', () => {
    expect(sparks('on', 'idle', {}, [{ kind: 'open', id: 'w1' }])).toBeCloseTo(2, 6)
  })

  it('earthed inside, with an open primary or dirty points fires no more', () => {
    expect(sparks('off', 'idle', {}, [{ kind: 'join', a: 'it:2', b: 'it:case' }])).toBeCloseTo(0, 2)
    expect(sparks('off', 'idle', {}, [{ kind: 'open', id: 'it.primary' }])).toBe(0)
    expect(sparks('off', 'idle', {}, [{ kind: 'ohms', id: 'it.points', ohm: 5 }])).toBeCloseTo(2 / 6, 6)
  })

  it('with positive earth is mirrored', () => {
    expect(sparks('off', 'idle', {}, [], '6+')).toBeCloseTo(-2, 6)
  })
})
