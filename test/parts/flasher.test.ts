import { describe, expect, it } from 'vitest'
import { IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Fault } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

const IN_STEP = '60 to 120 a minute'

/** A flasher on a battery, lamps of these watts on it, and a tell-tale lamp. */
function flashing(params: Params, watts: readonly number[], supply: '6-' | '12-' | '24-' = '12-', faults: readonly Fault[] = []) {
  const systemV = Number.parseInt(supply)
  const plan: RecordPlan = {
    supply, metals: ['body'], assume: IDEAL,
    parts: [
      part('battery', 'battery', { emfV: systemV, ohm: 0 }), part('unit', 'flasher', params), part('tell', 'lamp', { powerW: 2.2 }),
      ...watts.map((powerW, i) => part(`lamp${i}`, 'lamp', { powerW })),
    ],
    wires: [
      link('w1', 'battery:+', 'unit:49'), link('w2', 'unit:C', 'tell:in'), link('w3', 'tell:out', 'body'), link('e', 'battery:-', 'body'),
      ...watts.flatMap((_, i) => [link(`a${i}`, 'unit:49a', `lamp${i}:in`), link(`b${i}`, `lamp${i}:out`, 'body')]),
    ],
  }
  return solved(plan, setting(), faults).phases.unit
}
const rate = (params: Params, watts: readonly number[], supply?: '6-' | '12-' | '24-') => flashing(params, watts, supply).rate

describe('a hot-wire flasher', () => {
  // 60 to 120 a minute: German StVZO § 54, the Swiss VTS art. 79 and the UK inspection manual.
  it('keeps to the rules at its rated load', () => {
    for (const supply of ['6-', '12-', '24-'] as const) expect(rate({}, [21, 21], supply)).toBe(IN_STEP)
    expect(rate({ ratedW: 36 }, [18, 18])).toBe(IN_STEP)
  })

  it('begins dark', () => {
    expect(flashing({}, [21, 21]).cycle).toEqual(['dark', 'lit'])
  })

  it('about doubles with a dead bulb, slows with a trailer', () => {
    expect(rate({}, [21])).toBe('about double')
    expect(rate({}, [21, 21, 21, 21])).toBe('slow')
  })

  it('stays dark without lamps, lit when welded', () => {
    expect(flashing({}, []).rests).toBe('dark')
    expect(flashing({}, [21, 21], '12-', [{ kind: 'hold', part: 'unit', state: '', value: 'lit' }]).rests).toBe('lit')
  })

  it('lights its tell-tale for both lamps only', () => {
    const tell = (watts: readonly number[]) => flashing({}, watts).solutions!.map(({ lamps }) => lamps.tell.class)
    expect(tell([21, 21])).toEqual(['off', 'normal'])
    expect(tell([21])).toEqual(['off', 'off'])
  })
})

describe('a bimetal flasher', () => {
  it('keeps to the rules at its rated load', () => {
    expect(rate({ type: 'bimetal' }, [21, 21])).toBe(IN_STEP)
  })

  it('begins lit, and stays lit with a dead bulb', () => {
    expect(flashing({ type: 'bimetal' }, [21, 21]).cycle).toEqual(['lit', 'dark'])
    expect(flashing({ type: 'bimetal' }, [21]).rests).toBe('lit')
  })
})
