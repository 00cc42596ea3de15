import * as z from 'zod'
import { known, type ElementSpec, type PartKind } from '../record/index.ts'
import { practice } from './defaults.ts'

const params = z.object({
  ratedV: known(z.number().positive()).optional()
    .describe('Volts at which it is fully lit; left out, those of the system.'),
  ratedA: known(z.number().positive()).optional()
    .describe('Amps that it takes then; left out, a small LED lamp.'),
  forwardV: known(z.number().positive()).optional()
    .describe('Volts across its diodes alone, without the resistor, at those amps; left out, one red or amber diode.'),
  bridge: known(z.boolean()).optional().describe('Whether it lights either way round; left out, one way only.'),
  colour: z.string().optional().describe('Colour of its light, as a word, for people; no answer depends on it.'),
})

/** An LED lamp or LED warning lamp with its series resistor: an exponential law, and a direction. */
export const led: PartKind = {
  kind: 'led',
  plain: 'Light from a diode behind a resistor. It takes little current, works one way round only, and does not load a circuit as a bulb does.',
  params,
  terminals: () => [
    { is: 'in', marking: '+', what: 'positive end' },
    { is: 'out', marking: '-', what: 'negative end' },
  ],
  fails: () => [{ what: 'dead', fault: 'open:*', likelihood: 'seen' }, { what: 'wrong way round', fault: 'swap:*:in=*:out', likelihood: 'common' }],
  build(part, ctx) {
    const ratedV = ctx.number(['ratedV'], practice(ctx.systemV, 'system volts'))
    const ratedA = ctx.number(['ratedA'], practice(0.02, 'a small LED lamp'))
    const forwardV = ctx.number(['forwardV'], practice(2, 'one red or amber diode'))
    const isBridged = ctx.choice('bridge', false, 'it lights one way round only')
    const law = { kind: 'diode', forwardV, ratedA, emission: 2, ohm: Math.max(0, (ratedV - forwardV) / ratedA) } as const
    const one = (id: string, from: string, to: string): ElementSpec => ({
      id, from, to, does: 'load', ratedV, fedFrom: 10, law: { ...law, forwardV: ratedV },
    })
    return {
      elements: isBridged ? [one('', 'in', 'out'), one('back', 'out', 'in')] : [one('', 'in', 'out')],
      lamps: [{ id: '', element: '', ...(isBridged ? { beside: ['back'] } : {}), ratedV, ratedA, ...(typeof part.params.colour === 'string' ? { colour: part.params.colour } : {}) }],
    }
  },
}
