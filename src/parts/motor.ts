import * as z from 'zod'
import { known, type Params, type PartKind } from '../record/index.ts'
import { bySystem, practice } from './defaults.ts'
import { brushSchema, motorElements } from './motor-law.ts'

const params = z.object({
  ratedV: known(z.number().positive()).optional()
    .describe('Volts at which its running amps are stated; left out, those of the system.'),
  ...brushSchema.shape,
  brushes: z.record(z.string(), brushSchema).optional()
    .describe('For a motor of several speeds, each brush by its end, such as low and high, with its own figures, all against out; left out, it has one speed, from in to out.'),
})
type MotorParams = z.infer<typeof params>

/** A motor: a starter, a fan, a pump. Stalled it is its winding's resistance, running it takes its rated amps in proportion to its volts. */
export const motor: PartKind = {
  kind: 'motor',
  plain: 'A motor takes most when it stands. Once it runs it makes a voltage of its own against the supply.',
  params,
  terminals: (raw: Params) => [
    ...Object.keys((raw as MotorParams).brushes ?? { in: {} }).map((is) => ({ is, marking: is, what: is === 'in' ? 'supply' : `${is} brush` })),
    { is: 'out', marking: 'out', what: 'return' },
  ],
  fails: (raw: Params) => [
    ...Object.keys((raw as MotorParams).brushes ?? { '': {} }).map((id) => ({
      what: `worn brushes${id && `, ${id}`}`, fault: `open:*${id && `.${id}`}`, likelihood: 'common' as const,
    })),
    { what: 'stalled', fault: 'hold:*.shaft=still', likelihood: 'seen' },
  ],
  build(part, ctx) {
    const { brushes } = part.params as MotorParams
    const ratedV = ctx.number(['ratedV'], practice(ctx.systemV, 'system volts'))
    const made = Object.keys(brushes ?? { in: {} }).map((id) => {
      const path = brushes ? ['brushes', id] : []
      const ratedA = ctx.number([...path, 'ratedA'], practice(bySystem(ctx, 4, -1), 'a small motor of 48 W'))
      return {
        id: brushes ? id : '', from: id, to: 'out', ratedV, ratedA,
        stalledOhm: ctx.number([...path, 'stalledOhm'], practice(ratedV / ratedA / 4, 'stalled amps about four times the running amps')),
      }
    })
    const { elements, state } = motorElements(made)
    return { elements, states: [state] }
  },
}
