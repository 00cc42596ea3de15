import * as z from 'zod'
import { known, type BuildContext, type ElementSpec, type PartKind, type RegulatorSpec, type StateSpec } from '../record/index.ts'
import { makeBobbin, windingSchema, type Bobbin, type WindingParams } from './bobbin.ts'
import { practice } from './defaults.ts'

const bobbinSchema = z.strictObject({ windings: z.record(z.string(), windingSchema), pullAt: known(z.number().positive()).optional(), releaseAt: known(z.number().positive()).optional() })

const params = z.object({
  ratedA: known(z.number().positive()).optional(),
  /** No-load volts at which the voltage bobbin works. */
  setV: known(z.number().positive()).optional(),
  /** Volts by which the set volts fall at rated amps (series turns on the voltage bobbin of a two-bobbin box). */
  compensationV: known(z.number().min(0)).optional(),
  /** A third bobbin limits the current to this. */
  limitA: known(z.number().positive()).optional(),
  cutInV: known(z.number().positive()).optional(),
  reverseA: known(z.number().positive()).optional(),
  fieldResistorOhm: known(z.number().positive()).optional(),
  /** Where the regulating contact sits: D to F, or F to E for a dynamo whose field begins at D. */
  regulates: z.enum(['D-F', 'F-E']).optional(),
  /** Bobbins by their windings, in place of those that the figures above give. */
  cutout: bobbinSchema.optional(),
  voltage: bobbinSchema.optional(),
  current: bobbinSchema.optional(),
})
type BoxParams = z.infer<typeof params>

/** Turns of the fine windings that the figures are turned into; only their ratio to the pull counts. */
const SHUNT_TURNS = 1000
const SERIES_OHM = 0.003

/**
 * A dynamo's control box: a cut-out that joins D to A while the dynamo gives, and one regulating contact in the
 * field circuit that the voltage bobbin or the current bobbin works, whichever reaches its pull first.
 */
export const controlBox: PartKind = {
  kind: 'control-box',
  plain: 'Joins the dynamo to the battery only while it gives, and keeps its volts (and in a three-bobbin box its amps) in bounds by interrupting its field.',
  params,
  terminals: () => [
    { is: 'D', marking: 'D', what: 'dynamo armature' }, { is: 'F', marking: 'F', what: 'dynamo field' },
    { is: 'A', marking: 'A', what: 'battery and loads (B)' }, { is: 'E', marking: 'E', what: 'earth' },
  ],
  fails: [
    { what: 'cut-out stuck closed', fault: 'hold:*.cutout=closed', likelihood: 'seen' },
    { what: 'cut-out does not close', fault: 'open:*.cutout-contact', likelihood: 'seen' },
    { what: 'lost earth', fault: 'open:*:E', likelihood: 'common' },
    { what: 'regulating contact oxidised', fault: 'ohms:*.regulator=5', likelihood: 'common' },
  ],
  build(part, ctx) {
    const figures = boxFigures(ctx)
    const raw = part.params as BoxParams
    const bobbin = (id: 'cutout' | 'voltage' | 'current', made: Record<string, WindingParams>) =>
      makeBobbin(raw[id]?.windings ?? made, [id, 'windings'], ctx, `${id}-`)
    const cutout = bobbin('cutout', figures.cutoutWindings)
    const voltage = bobbin('voltage', figures.voltageWindings)
    const limits = raw.limitA !== undefined || raw.current !== undefined
    const current = limits ? bobbin('current', { series: { from: 'D', to: '~a', ohm: SERIES_OHM, turns: 1 } }) : null
    const pull = (id: 'voltage' | 'current', value: number) => ctx.number([id, 'pullAt'], practice(value, 'from its set figure'))
    const reaches = [
      { bobbin: voltage, pullAt: pull('voltage', figures.voltagePull) },
      ...(current ? [{ bobbin: current, pullAt: pull('current', ctx.number(['limitA'], practice(20, 'rated amps'))) }] : []),
    ]
    const [from, to] = raw.regulates === 'F-E' ? ['F', 'E'] : ['D', 'F']
    return {
      elements: [
        ...(current ? current.elements : [{ id: 'strap', from: 'D', to: '~a', law: { kind: 'resistor' as const, ohm: 0 }, does: 'joint' as const }]),
        ...voltage.elements, ...cutout.elements, cutoutContact(),
        { id: 'regulator', from, to, does: 'contact', law: (now) => ({ kind: 'resistor', ohm: now.regulatorOhm('regulator') }) },
      ],
      states: [cutoutState(cutout, ctx.number(['cutout', 'pullAt'], practice(figures.cutoutPull, 'from the cut-in volts')),
        ctx.number(['cutout', 'releaseAt'], practice(figures.cutoutRelease, 'from the reverse current')))],
      regulators: [regulator(reaches, ctx)],
    }
  },
}

/** Windings and pulls from the nameplate: a shunt of SHUNT_TURNS from ~a to E, series turns between ~b and A. */
function boxFigures(ctx: BuildContext) {
  const scale = ctx.systemV / 12
  const setV = ctx.number(['setV'], { value: 14.3 * scale, why: 'satisfactory regulated volts', source: 'us-army-tm-5-3820-233' })
  const cutInV = ctx.number(['cutInV'], { value: 12.8 * scale, why: 'satisfactory closing volts', source: 'us-army-tm-5-3820-233' })
  const reverseA = ctx.number(['reverseA'], practice(3, 'opens at 1 to 5 A back'))
  const ratedA = ctx.number(['ratedA'], practice(20, 'as the dynamo'))
  const compensationV = ctx.number(['compensationV'], practice(0, 'no series turns on the voltage bobbin'))
  const ohm = 60 * scale ** 2, perVolt = SHUNT_TURNS / ohm
  const shunt: WindingParams = { from: '~a', to: 'E', ohm, turns: SHUNT_TURNS }
  const cutoutPull = cutInV * perVolt, cutoutRelease = 0.6 * cutoutPull
  // On reverse current I the shunt sees about 2.1 V a cell from the battery; the series turns take away I·turns.
  const cutoutSeries = (2.1 * ctx.systemV / 2 * perVolt - cutoutRelease) / reverseA
  const series = (turns: number): WindingParams => ({ from: '~b', to: '~c', ohm: SERIES_OHM, turns })
  return {
    cutoutPull, cutoutRelease, voltagePull: setV * perVolt,
    cutoutWindings: { shunt, series: series(cutoutSeries) },
    voltageWindings: { shunt, series: { ...series(compensationV * perVolt / ratedA), from: '~c', to: 'A' } },
  }
}

function cutoutContact(): ElementSpec {
  return { id: 'cutout-contact', from: '~a', to: '~b', does: 'contact', law: (now) => (now.state('cutout') === 'closed' ? { kind: 'resistor', ohm: 0.003 } : { kind: 'open' }) }
}

function cutoutState(bobbin: Bobbin, pullAt: number, releaseAt: number): StateSpec {
  return {
    id: 'cutout', values: ['open', 'closed'], rest: 'open', made: 'closed',
    wants(view, value) {
      // Reverse current goes against the shunt: the iron passes through zero before it could hold the other way.
      const turns = bobbin.alongShunt(view)
      if (value === 'open') return turns >= pullAt ? { value: 'closed', afterMs: 15 } : null
      return turns < releaseAt ? { value: 'open', afterMs: 15 } : null
    },
  }
}

function regulator(reaches: readonly { readonly bobbin: Bobbin; readonly pullAt: number }[], ctx: BuildContext): RegulatorSpec {
  return {
    id: 'regulator', closedOhm: 0.02,
    openOhm: ctx.number(['fieldResistorOhm'], practice(60 * (ctx.systemV / 12) ** 2, 'a field resistor of usual size')),
    reach: (view) => Math.max(...reaches.map(({ bobbin, pullAt }) => Math.abs(bobbin.ampereTurns(view)) / pullAt)),
  }
}
