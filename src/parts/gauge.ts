import * as z from 'zod'
import { known, type DialSpec, type ParamProblem, type Params, type PartKind } from '../record/index.ts'
import { interpolate } from './curve.ts'
import { bySystem, practice } from './defaults.ts'

const params = z.object({
  type: known(z.enum(['bimetal', 'moving-coil', 'two-coil'])).optional().describe(
    'Bimetal: a strip that its winding warms, slow; moving-coil: amps move it at once; two-coil: the needle lies between two windings, '
    + 'the second to earth beside the sender, so that the supply\'s volts do not move it; left out, bimetal.'),
  ohm: known(z.number().positive()).optional()
    .describe('Winding from in to T, ohm; left out, a usual one for the system\'s volts.'),
  earthOhm: known(z.number().positive()).optional()
    .describe('Second winding of a two-coil gauge, from T to E, ohm; left out, as the first.'),
  scale: z.array(z.tuple([z.number(), z.number()])).min(2).optional().describe(
    'Pairs of what moves the needle and the reading there, with straight lines between them: amps from in to T; for a two-coil gauge the second '
    + 'winding\'s amps to those of the first; left out, 0 to 100 % over the usual amps, or from shorted sender to none.'),
  unit: z.string().optional().describe('What its scale counts, such as litres or °C; left out, %.'),
})
type GaugeParams = z.infer<typeof params>

/** Amps of a bimetal gauge at the ends of its scale; common practice, no source. */
const EMPTY_A = 0.03
const FULL_A = 0.12

/** A fuel, temperature or pressure gauge: one winding in series with its sender, or two between which the needle lies. */
export const gauge: PartKind = {
  kind: 'gauge',
  plain: 'Shows what its sender says. A plain one reads the current through the sender, so it rises with the volts unless a stabiliser feeds it; one of two coils compares two currents and does not mind.',
  params,
  terminals: ({ type }: Params) => [
    { is: 'in', marking: 'B', what: 'supply, or I of the stabiliser' }, { is: 'T', marking: 'T', what: 'to the sender' },
    ...(type === 'two-coil' ? [{ is: 'E', marking: 'E', what: 'earth' }] : []),
  ],
  fails: ({ type }: Params) => [
    { what: 'open winding', fault: 'open:*.winding', likelihood: 'seen' },
    { what: 'dirty or loose nut', fault: 'ohms:*.winding=20', likelihood: 'common' },
    ...(type === 'two-coil' ? [{ what: 'lost earth', fault: 'open:*:E', likelihood: 'seen' as const }, { what: 'open second winding', fault: 'open:*.earth-winding', likelihood: 'rare' as const }] : []),
  ],
  check: (raw: Params) => checkScale(raw as GaugeParams),
  build(part, ctx) {
    const { scale, unit = '%' } = part.params as GaugeParams
    const type = ctx.choice<'bimetal' | 'moving-coil' | 'two-coil'>('type', 'bimetal', 'the usual gauge behind a stabiliser')
    const hasTwo = type === 'two-coil'
    const ohm = ctx.number(['ohm'], practice(bySystem(ctx, 65, 1), 'a winding of usual size'))
    if (!scale) ctx.note({ path: 'params.scale', value: hasTwo ? 1 : FULL_A, why: hasTwo ? 'the second winding takes as much as the first' : 'amps at the end of the scale', source: 'common practice, no source' })
    const points = scale ?? (hasTwo ? [[0, 0], [1, 100]] as const : [[EMPTY_A, 0], [FULL_A, 100]] as const)
    return {
      elements: [
        { id: 'winding', from: 'in', to: 'T', does: 'load', law: { kind: 'resistor', ohm } },
        ...(hasTwo ? [{ id: 'earth-winding', from: 'T', to: 'E', does: 'load' as const, law: { kind: 'resistor' as const, ohm: ctx.number(['earthOhm'], practice(ohm, 'as the first winding')) } }] : []),
      ],
      dials: [{ id: '', unit, ...needle(type, points) }],
    }
  },
}

/** Heat goes by the square of the amps, and its mean is what the strip feels. */
function needle(type: 'bimetal' | 'moving-coil' | 'two-coil', points: readonly (readonly [number, number])[]): Pick<DialSpec, 'moves' | 'shows'> {
  switch (type) {
    case 'bimetal': return { moves: (view) => view.amps('winding') ** 2, shows: (mean) => interpolate(points, Math.sqrt(Math.max(0, mean))) }
    case 'moving-coil': return { moves: (view) => Math.abs(view.amps('winding')), shows: (mean) => interpolate(points, mean) }
    case 'two-coil': return {
      moves: (view) => Math.abs(view.amps('earth-winding')) / Math.max(Math.abs(view.amps('winding')), LEAST_A),
      shows: (mean) => interpolate(points, mean),
    }
  }
}

/** Below these amps the windings of a two-coil gauge are too weak for its needle, which sinks to the first point; common practice, no source. */
const LEAST_A = 0.005

function checkScale({ scale = [] }: GaugeParams): ParamProblem[] {
  const at = scale.map(([x]) => x)
  const twice = at.findIndex((x, i) => at.indexOf(x) < i)
  return twice < 0 ? [] : [{ path: ['scale', String(twice)], expected: 'one reading for each figure', received: `a second one for ${at[twice]}` }]
}
