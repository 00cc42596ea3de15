import * as z from 'zod'
import { known, type PartKind } from '../record/index.ts'
import { practice } from './defaults.ts'

const params = z.object({
  ohm: known(z.number().min(0)).optional().describe('From nut to nut, ohm; left out, a usual vehicle ammeter.'),
  fullScaleA: known(z.number().positive()).optional().describe('Amps at the end of its scale, for people; no answer depends on it.'),
})

/** An ammeter in the supply: a very small resistance whose current is its reading. */
export const ammeter: PartKind = {
  kind: 'ammeter',
  passes: true,
  plain: 'Shows the current into or out of the battery. Everything but the starter passes through it, so its nuts matter.',
  params,
  terminals: () => [{ is: 'in', marking: '+', what: 'battery side' }, { is: 'out', marking: '-', what: 'load side' }],
  fails: () => [{ what: 'loose nut', fault: 'ohms:*=0.1', likelihood: 'seen' }, { what: 'burnt through', fault: 'open:*', likelihood: 'rare' }],
  build(_, ctx) {
    const ohm = ctx.number(['ohm'], practice(0.002, 'a moving-iron vehicle ammeter'))
    return {
      elements: [{ id: '', from: 'in', to: 'out', law: { kind: 'resistor', ohm }, does: 'joint' }],
      dials: [{ id: '', unit: 'A', moves: (view) => view.amps(''), shows: (amps) => amps }],
    }
  },
}
