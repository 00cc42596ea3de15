import * as z from 'zod'
import { known, type PartKind, type PhaseSpec, type View } from '../record/index.ts'
import { partDefaults } from '../standards/index.ts'
import { bySystem, practice, relayContact } from './defaults.ts'

const params = z.object({
  setV: known(z.number().positive()).optional()
    .describe('Steady volts that would heat a gauge as much as its pulses do; left out, 10 on 12 V and in proportion elsewhere.'),
  heaterOhm: known(z.number().positive()).optional()
    .describe('Winding that heats its strip, ohm; left out, a usual one for the system\'s volts.'),
  contactOhm: known(z.number().min(0)).optional()
    .describe(`Closed contact, ohm; left out, the record's assumed relay contact, else ${partDefaults.relayContactMohm.value} mΩ.`),
})

/**
 * A bimetal voltage stabiliser. The heater hangs on the output, so the strip runs towards a heat of q = (volts / set volts)²
 * while the contact is closed and towards nought while it is open; it opens just above 1 and closes just below, and so stays
 * closed for 1/q of the time: the mean of the squared volts, which is what heats a bimetal gauge, is that of the set volts.
 */
export const stabiliser: PartKind = {
  kind: 'stabiliser',
  plain: 'Feeds the gauges in pulses, just long enough that they are warmed as by steady volts whatever the battery does. Without its earth it never opens, and every gauge reads high.',
  params,
  terminals: () => [
    { is: 'B', marking: 'B', what: 'supply' }, { is: 'I', marking: 'I', what: 'to the gauges' }, { is: 'E', marking: 'E', what: 'earth, mostly its case' },
  ],
  fails: () => [
    { what: 'lost earth: it stays closed', fault: 'open:*:E', likelihood: 'seen' },
    { what: 'contact welded', fault: 'hold:*=closed', likelihood: 'seen' },
    { what: 'contact burnt away', fault: 'open:*.contact', likelihood: 'seen' },
    { what: 'open heater: it stays closed', fault: 'open:*.heater', likelihood: 'rare' },
  ],
  build(_, ctx) {
    const setV = ctx.number(['setV'], practice(bySystem(ctx, 10, 1), 'the usual instrument volts'))
    const heaterOhm = ctx.number(['heaterOhm'], practice(bySystem(ctx, 65, 2), 'a heater of about 1.5 W'))
    const closed = { kind: 'resistor', ohm: ctx.number(['contactOhm'], relayContact(ctx)) } as const
    return {
      elements: [
        { id: 'contact', from: 'B', to: 'I', does: 'contact', law: (now) => (now.phase === 'closed' ? closed : { kind: 'open' }) },
        { id: 'heater', from: 'I', to: 'E', does: 'load', law: { kind: 'resistor', ohm: heaterOhm } },
      ],
      phase: stripPhase(setV, heaterOhm),
    }
  },
}

function stripPhase(setV: number, heaterOhm: number): PhaseSpec {
  const heat = (view: View | undefined) => ((view?.amps('heater') ?? 0) * heaterOhm / setV) ** 2
  return {
    names: ['closed', 'open'], start: 'closed',
    next: (view, phase) => (phase === 'open' ? 'closed' : heat(view) > 1 ? 'open' : null),
    rate: () => `pulses that heat as a steady ${Number(setV.toPrecision(3))} V`,
    shares(views) {
      const share = Math.min(1, 1 / heat(views.get('closed')))
      return new Map([['closed', share], ['open', 1 - share]])
    },
  }
}
