import * as z from 'zod'
import { known, type PartKind } from '../record/index.ts'
import { bySystem, practice } from './defaults.ts'

const params = z.object({
  ratedA: known(z.number().positive()).optional().describe('Mean amps that it takes at its rated volts; left out, a usual single horn.'),
  ratedV: known(z.number().positive()).optional().describe('Volts at which those amps are stated; left out, those of the system.'),
})

/** A horn: a stated resistance from its rated amps. */
export const horn: PartKind = {
  kind: 'horn',
  plain: 'A vibrating diaphragm that breaks its own current. Taken as the resistance of its mean current.',
  params,
  terminals: () => [{ is: 'in', marking: '+', what: 'supply' }, { is: 'out', marking: '-', what: 'return, or the button' }],
  fails: () => [{ what: 'points stuck open', fault: 'open:*', likelihood: 'common' }],
  build(_, ctx) {
    const ratedV = ctx.number(['ratedV'], practice(ctx.systemV, 'system volts'))
    const ratedA = ctx.number(['ratedA'], practice(bySystem(ctx, 4, -1), 'a single horn of 48 W'))
    return { elements: [{ id: '', from: 'in', to: 'out', law: { kind: 'resistor', ohm: ratedV / ratedA }, does: 'load', ratedV, fedFrom: 50 }] }
  },
}
