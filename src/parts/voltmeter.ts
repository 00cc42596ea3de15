import * as z from 'zod'
import { known, type PartKind } from '../record/index.ts'
import { bySystem, practice } from './defaults.ts'

const params = z.object({
  ohm: known(z.number().positive()).optional()
    .describe('From nut to nut, ohm; left out, a usual instrument for the system\'s volts.'),
  fullScaleV: known(z.number().positive()).optional().describe('Volts at the end of its scale, for people; no answer depends on it.'),
})

/** A voltmeter or battery-condition meter in the dash: a large resistance whose volts are its reading. */
export const voltmeter: PartKind = {
  kind: 'voltmeter',
  plain: 'Shows the volts between its two nuts. It takes next to nothing, so a poor joint before it hardly shows.',
  params,
  terminals: () => [{ is: 'in', marking: '+', what: 'fed side' }, { is: 'out', marking: '-', what: 'earthed side' }],
  fails: () => [{ what: 'open winding', fault: 'open:*', likelihood: 'rare' }, { what: 'reads low: a high resistance inside', fault: 'ohms:*=100', likelihood: 'rare' }],
  build(_, ctx) {
    const ohm = ctx.number(['ohm'], practice(bySystem(ctx, 200, 1), 'a dash instrument that takes some 60 mA'))
    return {
      elements: [{ id: '', from: 'in', to: 'out', law: { kind: 'resistor', ohm }, does: 'load' }],
      // The winding feels its own amps: a resistance before it inside the case lowers the reading.
      dials: [{ id: '', unit: 'V', moves: (view) => view.amps('') * ohm, shows: (volts) => volts }],
    }
  },
}
