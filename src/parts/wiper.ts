import * as z from 'zod'
import { known, type ElementSpec, type Params, type PartKind, type PhaseSpec, type View } from '../record/index.ts'
import { partDefaults } from '../standards/index.ts'
import { bySystem, practice, switchContact } from './defaults.ts'
import { brushSchema, motorElements } from './motor-law.ts'

const CAM = ['parked', 'rising', 'across', 'returning']

const params = z.object({
  ratedV: known(z.number().positive()).optional()
    .describe('Volts at which its running amps are stated; left out, those of the system.'),
  brushes: z.record(z.string(), brushSchema).optional()
    .describe('Its brushes by name: low and, for two speeds, high; left out, low alone.'),
  camPositions: z.array(z.string()).min(2).optional()
    .describe(`Positions of its cam in order, the first where the blades park; left out, ${CAM.join(', ')}.`),
  brakes: known(z.boolean()).optional()
    .describe('Whether the cam, while parked, joins park to out, which brakes the motor; left out, it only opens.'),
  parkOhm: known(z.number().min(0)).optional()
    .describe(`Closed park contact, ohm; left out, the record's assumed contact, else ${partDefaults.switchContactMohm.value} mΩ.`),
})
type WiperParams = z.infer<typeof params>

/**
 * A self-parking wiper motor. Its cam joins `park` to `feed` everywhere but where the blades rest; there the
 * contact opens, or joins `park` to `out` and brakes.
 */
export const wiper: PartKind = {
  kind: 'wiper',
  plain: 'A wiper motor with a cam switch that keeps it fed after it is switched off, until the blades lie where they should.',
  params,
  terminals: (raw: Params) => [
    ...Object.keys((raw as WiperParams).brushes ?? { low: {} }).map((is) => ({ is, marking: is === 'high' ? '53b' : '53', what: `${is} speed brush` })),
    { is: 'out', marking: '31', what: 'return' },
    { is: 'feed', marking: '53a', what: 'constant feed of the park switch' },
    { is: 'park', marking: '31b', what: 'park switch to the control' },
  ],
  fails: (raw: Params) => [
    { what: 'park switch does not make', fault: 'open:*.park', likelihood: 'common' },
    { what: 'stalled by stiff spindles', fault: 'hold:*.shaft=still', likelihood: 'common' },
    ...Object.keys((raw as WiperParams).brushes ?? { low: {} }).map((id) => ({ what: `worn brush, ${id}`, fault: `open:*.${id}`, likelihood: 'seen' as const })),
  ],
  build(part, ctx) {
    const { brushes, camPositions = CAM } = part.params as WiperParams
    const brakes = ctx.choice('brakes', false, 'the park contact only opens')
    const ratedV = ctx.number(['ratedV'], practice(ctx.systemV, 'system volts'))
    const made = Object.keys(brushes ?? { low: {} }).map((id) => {
      const ratedA = ctx.number(['brushes', id, 'ratedA'], practice(bySystem(ctx, id === 'high' ? 3.5 : 2.5, -1), 'a wiper motor on a wet screen'))
      const stalledOhm = ctx.number(['brushes', id, 'stalledOhm'], practice(ratedV / ratedA / 4, 'stalled amps about four times the running amps'))
      return { id, from: id, to: 'out', ratedV, ratedA, stalledOhm }
    })
    const { elements, state } = motorElements(made)
    const park = { kind: 'resistor', ohm: ctx.number(['parkOhm'], switchContact(ctx)) } as const
    const parked = camPositions[0]
    const contacts: ElementSpec[] = [
      { id: 'park', from: 'feed', to: 'park', does: 'contact', law: (now) => (now.phase === parked ? { kind: 'open' } : park) },
      ...(brakes ? [{ id: 'brake', from: 'park', to: 'out', does: 'contact' as const, law: (now: View['now']) => (now.phase === parked ? park : { kind: 'open' as const }) }] : []),
    ]
    return { elements: [...elements, ...contacts], states: [state], phase: camPhase(camPositions) }
  },
}

/** The cam turns on while the motor runs. */
function camPhase(positions: readonly string[]): PhaseSpec {
  return {
    names: positions, start: positions[0],
    next: (view, phase) => (view.now.state('shaft') === 'running' ? positions[(positions.indexOf(phase) + 1) % positions.length] : null),
    rate: () => 'wiping',
  }
}
