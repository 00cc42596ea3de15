import * as z from 'zod'
import { known, type PartKind } from '../record/index.ts'
import { partDefaults } from '../standards/index.ts'
import { standard } from './defaults.ts'

const { ballastedCoilOhm, coil6Ohm, plainCoil12Ohm } = partDefaults

const params = z.object({
  primaryOhm: known(z.number().positive()).optional().describe(
    `Primary winding, ohm; left out, ${plainCoil12Ohm.value} on 12 V, ${coil6Ohm.value} on 6 V, ${ballastedCoilOhm.value} on 12 V behind a ballast.`),
  ballasted: known(z.boolean()).optional()
    .describe('Whether it is made to work behind a ballast resistor, which is a part of its own; left out, it is not.'),
})

/** An ignition coil: its primary winding. The spark itself is not computed. */
export const coil: PartKind = {
  kind: 'coil',
  plain: 'Stores a spark in its primary winding while the points are closed and lets it go when they open. High tension: hands off.',
  params,
  terminals: () => [{ is: '15', marking: '15', what: 'supply (SW)' }, { is: '1', marking: '1', what: 'to the points (CB)' }],
  fails: () => [{ what: 'open primary', fault: 'open:*.primary', likelihood: 'seen' }, { what: 'wrong coil for the supply', fault: 'set:*.primaryOhm=1.5', likelihood: 'seen' }],
  build(_, ctx) {
    const usual = ctx.choice('ballasted', false, 'a coil without a ballast') ? standard(ballastedCoilOhm, ctx.systemV / 12)
      : ctx.systemV === 6 ? standard(coil6Ohm) : standard(plainCoil12Ohm, ctx.systemV / 12)
    const ohm = ctx.number(['primaryOhm'], usual)
    return { elements: [{ id: 'primary', from: '15', to: '1', law: { kind: 'resistor', ohm }, does: 'load', sparks: true }] }
  },
}
