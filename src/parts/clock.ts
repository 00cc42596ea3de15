import * as z from 'zod'
import { known, type Params, type PartKind, type PhaseSpec } from '../record/index.ts'
import { bySystem, practice } from './defaults.ts'

const params = z.object({
  type: known(z.enum(['steady', 'wound'])).optional()
    .describe('Steady: a balance or a small motor that takes a little all the time; wound: a magnet winds its spring by a brief pulse every few minutes; left out, steady.'),
  ratedA: known(z.number().positive()).optional()
    .describe('Amps that it takes at its rated volts, while it is wound or all the time; left out, a usual clock of its type.'),
  ratedV: known(z.number().positive()).optional().describe('Volts at which those amps are stated; left out, those of the system.'),
  windsFromV: known(z.number().positive()).optional()
    .describe('Volts below which the magnet of a wound clock no longer throws its arm, so that its contact stays made; left out, two thirds of its rated volts.'),
})

/** An electric clock: a small steady load, or a contact that is made for a moment every few minutes. */
export const clock: PartKind = {
  kind: 'clock',
  plain: 'Is fed all the time, even with the key out. One that winds itself takes a short pulse now and then; on a weak battery the pulse does not end, and it burns out.',
  params,
  terminals: () => [{ is: 'in', marking: '+', what: 'supply' }, { is: 'out', marking: '-', what: 'return, mostly its case' }],
  fails: ({ type }: Params) => [
    ...(type === 'wound' ? [{ what: 'contact stuck made', fault: 'hold:*=winding', likelihood: 'seen' as const }] : []),
    { what: type === 'wound' ? 'burnt contact' : 'open winding', fault: 'open:*', likelihood: 'seen' },
  ],
  build(_, ctx) {
    const isWound = ctx.choice<'steady' | 'wound'>('type', 'steady', 'a clock that takes a little all the time') === 'wound'
    const ratedV = ctx.number(['ratedV'], practice(ctx.systemV, 'system volts'))
    const ratedA = ctx.number(['ratedA'], isWound ? practice(bySystem(ctx, 3, -1), 'the pulse of a winding magnet') : practice(0.005, 'the mean of a small clock'))
    const ohm = ratedV / ratedA
    if (!isWound) return { elements: [{ id: '', from: 'in', to: 'out', law: { kind: 'resistor', ohm }, does: 'load', ratedV }] }
    const windsFromA = ctx.number(['windsFromV'], practice(ratedV * 2 / 3, 'winds from two thirds of its volts')) / ohm
    return {
      elements: [{ id: '', from: 'in', to: 'out', does: 'load', ratedV, law: (now) => (now.phase === 'winding' ? { kind: 'resistor', ohm } : { kind: 'open' }) }],
      phase: windingPhase(windsFromA),
    }
  },
}

/** Run down, its contact makes; thrown by the magnet, its arm breaks it. */
function windingPhase(windsFromA: number): PhaseSpec {
  return {
    names: ['ticking', 'winding'], start: 'ticking',
    next: (view, phase) => (phase === 'ticking' ? 'winding' : Math.abs(view.amps('')) >= windsFromA ? 'ticking' : null),
    rate: () => 'a pulse every few minutes',
    shares: () => new Map([['ticking', 1], ['winding', 0]]),
  }
}
