import * as z from 'zod'
import { known, type PartKind } from '../record/index.ts'
import { practice, recordOr } from './defaults.ts'

const params = z.object({
  ohm: known(z.number().min(0)).optional()
    .describe('Closed points, ohm; left out, the record\'s assumed contact, else points in use.'),
})

/** Contact breaker: closed while the engine stands so, and while it turns (the peak of the coil's current, not its mean). */
export const breaker: PartKind = {
  kind: 'breaker',
  plain: 'The points: a contact that the engine opens for every spark. While it turns, the figures are those of the closed points.',
  params,
  terminals: () => [{ is: '1', marking: '1', what: 'from the coil' }, { is: 'case', marking: '31', what: 'base plate' }],
  fails: () => [{ what: 'burnt points', fault: 'ohms:*=0.5', likelihood: 'common' }, { what: 'do not close', fault: 'open:*', likelihood: 'common' }],
  build(_, ctx) {
    const ohm = ctx.number(['ohm'], recordOr(ctx, 'contactOhm', practice(0.02, 'points in use')))
    return { turns: true, elements: [{ id: '', from: '1', to: 'case', does: 'contact', law: (now) => (now.pointsOpen ? { kind: 'open' } : { kind: 'resistor', ohm }) }] }
  },
}
