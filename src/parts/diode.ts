import * as z from 'zod'
import { known, type PartKind } from '../record/index.ts'
import { practice } from './defaults.ts'

const params = z.object({
  forwardV: known(z.number().positive()).optional()
    .describe('Volts that it keeps back at its rated amps; left out, a silicon diode.'),
  ratedA: known(z.number().positive()).optional()
    .describe('Amps at which those volts are stated; left out, a small silicon diode.'),
  ohm: known(z.number().min(0)).optional()
    .describe('The part of it that is plain resistance, ohm; left out, a small part, by its rated amps.'),
})

/** A diode: current from anode to cathode only. */
export const diode: PartKind = {
  kind: 'diode',
  plain: 'A one-way valve for current, from its anode to its cathode (the end with the band). It keeps back some 0.7 V.',
  params,
  terminals: () => [{ is: 'anode', marking: 'A', what: 'anode' }, { is: 'cathode', marking: 'K', what: 'cathode, the banded end' }],
  fails: () => [{ what: 'open', fault: 'open:*', likelihood: 'seen' }, { what: 'shorted', fault: 'join:*:anode=*:cathode', likelihood: 'seen' }],
  build(_, ctx) {
    const forwardV = ctx.number(['forwardV'], practice(0.8, 'a silicon diode'))
    const ratedA = ctx.number(['ratedA'], practice(1, 'a small silicon diode'))
    const ohm = ctx.number(['ohm'], practice(0.05 / ratedA, 'leads and silicon'))
    return { elements: [{ id: '', from: 'anode', to: 'cathode', law: { kind: 'diode', forwardV, ratedA, emission: 1.8, ohm }, does: 'load' }] }
  },
}
