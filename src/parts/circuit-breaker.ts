import * as z from 'zod'
import { known, type Params, type PartKind, type PhaseSpec, type StateSpec, type View } from '../record/index.ts'
import { practice } from './defaults.ts'

/** What opens it, to its rating: as a blade fuse (ISO 8820-3). Common practice, no source for breakers. */
const TRIP_RATIO = 1.35
/** Order of time in which it opens against the faster contacts, ms; common practice, no source. */
const TRIP_MS = 1000

const params = z.object({
  ratingA: known(z.number().positive()).optional().describe('Amps that it carries for ever; left out, a usual breaker of a lighting circuit.'),
  tripA: known(z.number().positive()).optional().describe(`Amps above which it opens; left out, its rating times ${TRIP_RATIO}.`),
  resets: known(z.enum(['itself', 'by hand'])).optional()
    .describe('Whether it closes again as it cools, and so opens and closes as long as the fault lasts, or stays open until its button is pushed; left out, itself.'),
  ohm: known(z.number().min(0)).optional().describe('Closed, with its strip, ohm; left out, a usual breaker by its rating.'),
})

/** Volts over strip and contact at the rated amps; common practice, no source. */
const STRIP_V = 0.15

/** A thermal circuit breaker: a contact on a strip that the current warms. */
export const circuitBreaker: PartKind = {
  kind: 'circuit-breaker',
  plain: 'Protects a wire as a fuse does, but closes again: by itself when it has cooled, so that headlamps come back for a while, or when its button is pushed.',
  params,
  terminals: () => [{ is: 'in', marking: 'B', what: 'supply side' }, { is: 'out', marking: 'A', what: 'load side' }],
  fails: ({ resets }: Params) => [
    { what: 'dirty or burnt contact', fault: 'ohms:*=0.3', likelihood: 'common' },
    { what: 'does not close', fault: 'open:*', likelihood: 'seen' },
    { what: 'contact welded: it no longer protects', fault: resets === 'by hand' ? 'hold:*.strip=closed' : 'hold:*=closed', likelihood: 'rare' },
  ],
  build(_, ctx) {
    const ratingA = ctx.number(['ratingA'], practice(20, 'a usual breaker; the rating is not stated'))
    const tripA = ctx.number(['tripA'], practice(ratingA * TRIP_RATIO, 'from its rating'))
    const closed = { kind: 'resistor', ohm: ctx.number(['ohm'], practice(STRIP_V / ratingA, 'strip and contact by its rating')) } as const
    const resetsItself = ctx.choice<'itself' | 'by hand'>('resets', 'itself', 'the usual breaker of a lighting circuit') === 'itself'
    const trips = (view: View) => Math.abs(view.amps('')) > tripA
    return {
      elements: [{ id: '', from: 'in', to: 'out', does: 'contact', law: (now) => ((resetsItself ? now.phase : now.state('strip')) === 'closed' ? closed : { kind: 'open' }) }],
      ...(resetsItself ? { phase: coolingPhase(trips) } : { states: [latchedStrip(trips)] }),
    }
  },
}

function coolingPhase(trips: (view: View) => boolean): PhaseSpec {
  return {
    names: ['closed', 'open'], start: 'closed', warns: true,
    next: (view, phase) => (phase === 'open' ? 'closed' : trips(view) ? 'open' : null),
    rate: () => 'opens and closes by its own heat',
  }
}

function latchedStrip(trips: (view: View) => boolean): StateSpec {
  return {
    id: 'strip', values: ['closed', 'tripped'], rest: 'closed', tells: { tripped: 'has tripped' },
    wants: (view, value) => (value === 'closed' && trips(view) ? { value: 'tripped', afterMs: TRIP_MS } : null),
  }
}
