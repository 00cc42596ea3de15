import * as z from 'zod'
import { known, type PartKind } from '../record/index.ts'
import { practice } from './defaults.ts'

const params = z.object({ primaryOhm: known(z.number().positive()).optional(), ballasted: z.boolean().optional() })

/** Primary resistance of a plain 12 V coil, a ballasted one and a 6 V one, ohm: middles of the usual ranges; common practice, no source. */
const OHM = { plain: 3.1, ballasted: 1.5, six: 1.4 }

/** An ignition coil: its primary winding. The spark itself is not computed. */
export const coil: PartKind = {
  kind: 'coil',
  plain: 'Stores a spark in its primary winding while the points are closed and lets it go when they open. High tension: hands off.',
  params,
  terminals: () => [{ is: '15', marking: '15', what: 'supply (SW)' }, { is: '1', marking: '1', what: 'to the points (CB)' }],
  fails: [{ what: 'open primary', fault: 'open:*.primary', likelihood: 'seen' }, { what: 'wrong coil for the supply', fault: 'set:*.primaryOhm=1.5', likelihood: 'seen' }],
  build(part, ctx) {
    const usual = part.params.ballasted === true ? OHM.ballasted : ctx.systemV === 6 ? OHM.six : OHM.plain * ctx.systemV / 12
    const ohm = ctx.number(['primaryOhm'], practice(usual, 'a coil of this kind'))
    return { elements: [{ id: 'primary', from: '15', to: '1', law: { kind: 'resistor', ohm }, does: 'load' }] }
  },
}
