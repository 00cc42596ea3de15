import * as z from 'zod'
import { known, type ElementSpec, type Law, type Now, type StateSpec, type View } from '../record/index.ts'

/** What the record states of one brush of a motor. */
export const brushSchema = z.strictObject({
  ratedA: known(z.number().positive()).optional()
    .describe('Amps that it takes while running at its rated volts; left out, a usual motor of the kind.'),
  stalledOhm: known(z.number().positive()).optional()
    .describe('Resistance while it stands, ohm; left out, what makes it take several times its running amps.'),
})

/** One pair of brushes of a motor. */
export interface Brush { readonly id: string; readonly from: string; readonly to: string; readonly ratedV: number; readonly ratedA: number; readonly stalledOhm: number }

/** A motor counts as fed above this share of its rated volts. */
const FED = 0.1
/** Time to gather way, ms, and to stand again once nothing drives it; common practice, no source. */
const START_MS = 50
const REST_MS = 300

/**
 * A motor's elements and the state of its shaft. Still: its winding's resistance. Running: the back-EMF grows with
 * the volts, so it takes rated amps in proportion. Coasting: the back-EMF it had, for one step of the states.
 * `hold:PART.shaft=still` is a stalled motor.
 */
export function motorElements(brushes: readonly Brush[]): { elements: ElementSpec[]; state: StateSpec } {
  const elements = brushes.map((brush): ElementSpec => ({
    id: brush.id, from: brush.from, to: brush.to, does: 'load', ratedV: brush.ratedV, fedFrom: 100 * FED,
    law: (now) => brushLaw(brush, now),
  }))
  return { elements, state: shaftState(brushes) }
}

function brushLaw({ ratedV, ratedA, stalledOhm }: Brush, now: Now): Law {
  switch (now.state('shaft')) {
    case 'running': return { kind: 'resistor', ohm: ratedV / ratedA }
    case 'coasting': return { kind: 'source', emfV: now.kept('shaft'), ohm: stalledOhm }
    default: return { kind: 'resistor', ohm: stalledOhm }
  }
}

function shaftState(brushes: readonly Brush[]): StateSpec {
  const fed = (view: View) => brushes.some(({ from, to, ratedV }) => Math.abs(view.volts(from, to)) > FED * ratedV)
  return {
    id: 'shaft', values: ['still', 'running', 'coasting'], rest: 'still',
    wants(view, value) {
      if (value === 'still') return fed(view) ? { value: 'running', afterMs: START_MS } : null
      if (value === 'running') return fed(view) ? null : { value: 'coasting', afterMs: 0 }
      return { value: 'still', afterMs: REST_MS }
    },
    keeps: (view, from, to) => (from === 'running' && to === 'coasting' ? view.now.kept('shaft') : backEmf(brushes, view)),
    keepsAtRest: (view, value) => (value === 'running' ? backEmf(brushes, view) : value === 'coasting' ? view.now.kept('shaft') : 0),
  }
}

/** Back-EMF of a motor that runs at these volts: what is left of them after the winding's drop, on the brushes with the most. */
function backEmf(brushes: readonly Brush[], view: View): number {
  const emfs = brushes.map(({ from, to, ratedV, ratedA, stalledOhm }) => view.volts(from, to) * (1 - stalledOhm * ratedA / ratedV))
  return emfs.reduce((most, emf) => (Math.abs(emf) > Math.abs(most) ? emf : most), 0)
}
