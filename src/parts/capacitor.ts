import * as z from 'zod'
import { known, type PartKind } from '../record/index.ts'

const params = z.object({
  microF: known(z.number().positive()).optional().describe('Capacity, microfarad, for people; no answer depends on it, since nothing here changes faster than a lamp.'),
})

/** A condenser beside the points, or a suppressor: to steady current it is open. */
export const capacitor: PartKind = {
  kind: 'capacitor',
  plain: 'Keeps the points from burning, or a radio from crackling. Steady current does not pass it; shorted, it stops the engine or blows a fuse.',
  params,
  terminals: () => [{ is: 'in', marking: '+', what: 'lead' }, { is: 'case', marking: '31', what: 'case' }],
  fails: () => [
    { what: 'shorted to its case', fault: 'join:*:in=*:case', likelihood: 'seen' },
    // It changes no steady volts, but burns the points and takes the spark.
    { what: 'open inside: no reading shows it', fault: 'open:*', likelihood: 'seen' },
  ],
  build: () => ({ elements: [{ id: '', from: 'in', to: 'case', law: { kind: 'open' }, does: 'load' }] }),
}
