import * as z from 'zod'
import { known, type PartKind } from '../record/index.ts'
import { practice } from './defaults.ts'

const params = z.object({
  ohm: known(z.number().min(0)).optional()
    .describe('Its resistance, ohm; left out, by its watts, and without these a figure that is only a guess.'),
  powerW: known(z.number().positive()).optional()
    .describe('Watts at its rated volts, as a heater states them, in place of ohm; left out, they play no part.'),
  ratedV: known(z.number().positive()).optional()
    .describe('Volts at which its watts are stated; left out, those of the system.'),
})

/** A resistor, ballast, heater or anything that behaves as a plain resistance. */
export const resistor: PartKind = {
  kind: 'resistor',
  plain: 'A plain resistance: a ballast, a dropper, a heater element. It turns what it takes into heat.',
  params,
  terminals: () => [{ is: 'a', marking: 'a', what: 'first end' }, { is: 'b', marking: 'b', what: 'second end' }],
  fails: () => [{ what: 'burnt through', fault: 'open:*', likelihood: 'seen' }],
  build(part, ctx) {
    const ratedV = ctx.number(['ratedV'], practice(ctx.systemV, 'system volts'))
    const { powerW } = part.params
    const ohm = ctx.number(['ohm'], typeof powerW === 'number' ? practice(ratedV ** 2 / powerW, 'from watts at rated volts') : practice(10, 'neither ohms nor watts are stated'))
    return { elements: [{ id: '', from: 'a', to: 'b', law: { kind: 'resistor', ohm }, does: 'load', ratedV }] }
  },
}
