import * as z from 'zod'
import { known, type PartKind } from '../record/index.ts'
import { partDefaults } from '../standards/index.ts'
import { standard } from './defaults.ts'

const params = z.object({ primaryOhm: known(z.number().positive()).optional(), ballasted: known(z.boolean()).optional() })

/** An ignition coil: its primary winding. The spark itself is not computed. */
export const coil: PartKind = {
  kind: 'coil',
  plain: 'Stores a spark in its primary winding while the points are closed and lets it go when they open. High tension: hands off.',
  params,
  terminals: () => [{ is: '15', marking: '15', what: 'supply (SW)' }, { is: '1', marking: '1', what: 'to the points (CB)' }],
  fails: () => [{ what: 'open primary', fault: 'open:*.primary', likelihood: 'seen' }, { what: 'wrong coil for the supply', fault: 'set:*.primaryOhm=1.5', likelihood: 'seen' }],
  build(_, ctx) {
    const usual = ctx.choice('ballasted', false, 'a coil without a ballast') ? standard(partDefaults.ballastedCoilOhm, ctx.systemV / 12)
      : ctx.systemV === 6 ? standard(partDefaults.coil6Ohm) : standard(partDefaults.plainCoil12Ohm, ctx.systemV / 12)
    const ohm = ctx.number(['primaryOhm'], usual)
    return { elements: [{ id: 'primary', from: '15', to: '1', law: { kind: 'resistor', ohm }, does: 'load', sparks: true }] }
  },
}
