import * as z from 'zod'
import { known, type ElementSpec, type Params, type PartKind } from '../record/index.ts'
import { partDefaults } from '../standards/index.ts'
import { soundJoint } from './defaults.ts'

const params = z.object({
  ways: known(z.int().min(2).max(60)).optional().describe('Number of its ends, named 1, 2, 3 …; left out, two.'),
  ohm: known(z.number().min(0)).optional()
    .describe(`From way 1 to each other way, ohm; left out, the record's assumed joint, else ${partDefaults.jointMohm.value} mΩ.`),
})
const waysOf = (raw: Params) => (typeof raw.ways === 'number' ? raw.ways : 2)

/** A terminal block, bullet sleeve or bus bar: way 1 joined to every other way. */
export const joint: PartKind = {
  kind: 'joint',
  passes: true,
  plain: 'A place where wires meet: a terminal block, a bullet sleeve, a common bar.',
  params,
  terminals: (raw) => Array.from({ length: waysOf(raw) }, (_, i) => ({ is: `${i + 1}`, marking: `${i + 1}`, what: `way ${i + 1}` })),
  fails: () => [{ what: 'corroded', fault: 'ohms:*=1', likelihood: 'common' }, { what: 'loose', fault: 'open:*', likelihood: 'common' }],
  build(part, ctx) {
    const ohm = ctx.number(['ohm'], soundJoint(ctx))
    const ways = waysOf(part.params)
    return {
      elements: Array.from({ length: ways - 1 }, (_, i): ElementSpec => ({
        id: ways === 2 ? '' : `${i + 2}`, from: '1', to: `${i + 2}`, law: { kind: 'resistor', ohm }, does: 'joint',
      })),
    }
  },
}
