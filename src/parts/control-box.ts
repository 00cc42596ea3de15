import * as z from 'zod'
import { known, type BuildContext, type Default, type ElementSpec, type Params, type PartKind, type RegulatorSpec, type StateSpec } from '../record/index.ts'
import { nameSource, regulation } from '../standards/index.ts'
import { checkPull, checkWindings, makeBobbin, windingSchema, type Bobbin, type WindingParams } from './bobbin.ts'
import { bySystem, practice } from './defaults.ts'

const bobbinSchema = z.strictObject({
  windings: z.record(z.string(), windingSchema).describe(
    'Its windings by name, each between two of D, F, A, E, ~a, ~b and ~c: inside the box the current goes from D to ~a '
    + '(the current winding, or a strap), through the cut-out\'s contact to ~b, and through the series windings by ~c to A.'),
  pullAt: known(z.number().positive()).optional()
    .describe('Ampere-turns at which it works; left out, those at the volts or amps that the box states for it.'),
  releaseAt: known(z.number().positive()).optional()
    .describe('Ampere-turns below which the cut-out lets go; left out, well below its pull. The others do not need it.'),
})

const params = z.object({
  ratedA: known(z.number().positive()).optional()
    .describe('Amps of the dynamo that it is made for; left out, those of a dynamo of usual size.'),
  setV: known(z.number().positive()).optional()
    .describe('Volts without load at which the voltage bobbin works; left out, a published figure for the system\'s volts.'),
  compensationV: known(z.number().min(0)).optional()
    .describe('Volts by which the set volts fall at rated amps, by series turns on the voltage bobbin; left out, a usual fall in a two-bobbin box and none where a third bobbin limits the current.'),
  limitA: known(z.number().positive()).optional()
    .describe('Amps to which a third bobbin limits the current; left out, there is no third bobbin, unless current describes one: then the rated amps. "unknown": there is one, at the rated amps.'),
  cutInV: known(z.number().positive()).optional()
    .describe('Volts at which the cut-out closes; left out, a published figure for the system\'s volts.'),
  reverseA: known(z.number().positive()).optional()
    .describe('Amps back into the dynamo at which the cut-out opens; left out, a usual figure.'),
  fieldResistorOhm: known(z.number().positive()).optional()
    .describe('Resistor in the field while the regulating contact is open, ohm; left out, one of usual size for the system\'s volts.'),
  weldA: known(z.number().positive()).optional()
    .describe('Amps, either way, that weld the cut-out\'s contact; left out, several times the rated amps.'),
  cutoutContactOhm: known(z.number().positive()).optional()
    .describe('Closed contact of the cut-out, ohm; left out, a heavy contact in use.'),
  regulatorContactOhm: known(z.number().positive()).optional()
    .describe('Closed regulating contact, ohm; left out, such a contact in use.'),
  regulates: known(z.enum(['D-F', 'F-E'])).optional()
    .describe('Where the regulating contact sits: from D to F, or from F to E for a dynamo whose field begins at D; left out, D-F.'),
  cutout: bobbinSchema.optional()
    .describe('The cut-out\'s bobbin by its windings; left out, one that closes at cutInV and opens at reverseA.'),
  voltage: bobbinSchema.optional()
    .describe('The voltage bobbin by its windings; left out, one that works at setV with its compensationV.'),
  current: bobbinSchema.optional()
    .describe('The current bobbin by its windings; left out, one that works at limitA, if that is stated.'),
})
type BoxParams = z.infer<typeof params>

/** Turns of the fine windings that the figures are turned into; only their ratio to the pull counts. */
const SHUNT_TURNS = 1000
const SERIES_OHM = 0.003
/** Where a winding may begin and end. */
const ENDS = ['D', 'F', 'A', 'E', '~a', '~b', '~c']

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
  fails: () => [
    { what: 'cut-out welded', fault: 'hold:*.cutout=welded', likelihood: 'seen' },
    { what: 'cut-out does not close', fault: 'open:*.cutout-contact', likelihood: 'seen' },
    { what: 'lost earth', fault: 'open:*:E', likelihood: 'common' },
    { what: 'regulating contact oxidised', fault: 'ohms:*.regulator=5', likelihood: 'common' },
    { what: 'regulating contact welded: D on F for good', fault: 'join:*:D=*:F', likelihood: 'seen' },
    { what: 'open fine winding of the regulator', fault: 'open:*.voltage-shunt', likelihood: 'rare' },
    { what: 'open fine winding of the cut-out', fault: 'open:*.cutout-shunt', likelihood: 'rare' },
  ],
  check: (raw: Params) => (['cutout', 'voltage', 'current'] as const).flatMap((id) => {
    const bobbin = (raw as BoxParams)[id]
    return bobbin ? [...checkWindings(bobbin.windings, [id, 'windings'], ENDS), ...checkPull(bobbin, [id])] : []
  }),
  build(part, ctx) {
    const raw = part.params as BoxParams
    const voltage = voltageBobbin(raw, ctx), current = currentBobbin(raw, ctx), cutout = cutoutBobbin(raw, ctx)
    const contactOhm = ctx.number(['cutoutContactOhm'], practice(0.003, 'a heavy contact in use'))
    const [from, to] = ctx.choice<'D-F' | 'F-E'>('regulates', 'D-F', 'the field earthed in the dynamo') === 'F-E' ? ['F', 'E'] : ['D', 'F']
    return {
      elements: [
        ...(current ? current.bobbin.elements : [{ id: 'strap', from: 'D', to: '~a', law: { kind: 'resistor' as const, ohm: 0 }, does: 'joint' as const }]),
        ...voltage.bobbin.elements, ...cutout.bobbin.elements, cutoutContact(contactOhm),
        { id: 'regulator', from, to, does: 'contact', law: (now) => ({ kind: 'resistor', ohm: now.regulatorOhm('regulator') }) },
      ],
      states: [cutoutState(cutout, ctx.number(['weldA'], () => practice(5 * ratedAmps(ctx), 'five times the rated amps, back or forth')))],
      regulators: [regulator(current ? [voltage, current] : [voltage], ctx)],
    }
  },
}

/** A bobbin and the ampere-turns at which it works. */
interface Puller { readonly bobbin: Bobbin; readonly pullAt: number }

/** Ohms of a fine winding, and the ampere-turns that one volt over its SHUNT_TURNS gives. */
function shuntFigures({ systemV }: BuildContext) {
  const ohm = 60 * (systemV / 12) ** 2
  return { ohm, perVolt: SHUNT_TURNS / ohm, winding: { from: '~a', to: 'E', ohm, turns: SHUNT_TURNS } satisfies WindingParams }
}

/** A published figure: for 6 V the middle of its own band, else that of 12 V in proportion to the system's volts. */
function published({ systemV }: BuildContext, at6: SixVolt, at12: TwelveVolt): Default {
  if (systemV === 6) return { value: (at6.minV + at6.maxV) / 2, why: at6.item, source: nameSource(at6.source) }
  const why = systemV === 12 ? at12.item : `${at12.item}, in proportion`
  return { value: at12.setV * systemV / 12, why, source: nameSource(at12.source) }
}
type SixVolt = typeof regulation.regulated6V | typeof regulation.cutOutClose6V
type TwelveVolt = typeof regulation.dynamo12V | typeof regulation.cutOutClose12V

/** Rated amps where the box does not state them: those that the dynamo kind takes on these volts. */
function ratedAmps(ctx: BuildContext): number {
  return ctx.number(['ratedA'], practice(bySystem(ctx, 20, -0.5), 'a dynamo of usual size'))
}

/** Its windings as stated, else a shunt, and series turns by which the set volts fall with the current. */
function voltageBobbin(raw: BoxParams, ctx: BuildContext): Puller {
  const { perVolt, winding } = shuntFigures(ctx)
  const made = (): Record<string, WindingParams> => {
    const fallV = ctx.number(['compensationV'], limitsCurrent(raw)
      ? practice(0, 'a third bobbin limits the current') : practice(1.5 * ctx.systemV / 12, 'series turns keep a two-bobbin box from overloading its dynamo'))
    const ratedA = fallV === 0 ? 1 : ratedAmps(ctx)
    return { shunt: winding, series: { from: '~c', to: 'A', ohm: SERIES_OHM, turns: fallV * perVolt / ratedA } }
  }
  const bobbin = makeBobbin(raw.voltage?.windings ?? made(), ['voltage', 'windings'], ctx, 'voltage-')
  const pullAt = ctx.number(['voltage', 'pullAt'], () => {
    const setV = ctx.number(['setV'], published(ctx, regulation.regulated6V, regulation.dynamo12V))
    return practice(setV * bobbin.perVolt, 'from its set volts')
  })
  return { bobbin, pullAt }
}

const limitsCurrent = (raw: BoxParams) => raw.limitA !== undefined || raw.current !== undefined

/** The third bobbin of a box that limits its current. */
function currentBobbin(raw: BoxParams, ctx: BuildContext): Puller | null {
  if (!limitsCurrent(raw)) return null
  const made: Record<string, WindingParams> = { series: { from: 'D', to: '~a', ohm: SERIES_OHM, turns: 1 } }
  const bobbin = makeBobbin(raw.current?.windings ?? made, ['current', 'windings'], ctx, 'current-')
  const pullAt = ctx.number(['current', 'pullAt'], () => {
    const limitA = ctx.number(['limitA'], () => practice(ratedAmps(ctx), 'rated amps'))
    return practice(limitA * bobbin.perAmpere, 'from its limit')
  })
  return { bobbin, pullAt }
}

/** Closes at the cut-in volts; the series turns are those that bring it to its release at the reverse current. */
function cutoutBobbin(raw: BoxParams, ctx: BuildContext): Puller & { readonly releaseAt: number } {
  const { perVolt, winding } = shuntFigures(ctx)
  const cutIn = (turnsPerVolt: number) => practice(ctx.number(['cutInV'], published(ctx, regulation.cutOutClose6V, regulation.cutOutClose12V)) * turnsPerVolt, 'from its cut-in volts')
  const release = (pullAt: number) => ctx.number(['cutout', 'releaseAt'], practice(0.6 * pullAt, 'lets go well below its pull'))
  if (raw.cutout) {
    const bobbin = makeBobbin(raw.cutout.windings, ['cutout', 'windings'], ctx, 'cutout-')
    const pullAt = ctx.number(['cutout', 'pullAt'], () => cutIn(bobbin.perVolt))
    return { bobbin, pullAt, releaseAt: release(pullAt) }
  }
  const pullAt = ctx.number(['cutout', 'pullAt'], () => cutIn(perVolt)), releaseAt = release(pullAt)
  const reverseA = ctx.number(['reverseA'], practice(3, 'opens at 1 to 5 A back'))
  // On reverse current I the shunt sees about 2.1 V a cell from the battery; the series turns take away I·turns.
  const turns = (2.1 * ctx.systemV / 2 * perVolt - releaseAt) / reverseA
  const windings = { shunt: winding, series: { from: '~b', to: '~c', ohm: SERIES_OHM, turns } }
  return { bobbin: makeBobbin(windings, ['cutout', 'windings'], ctx, 'cutout-'), pullAt, releaseAt }
}

function cutoutContact(ohm: number): ElementSpec {
  return { id: 'cutout-contact', from: '~a', to: '~b', does: 'contact', law: (now) => (now.state('cutout') !== 'open' ? { kind: 'resistor', ohm } : { kind: 'open' }) }
}

/** A surge above `weldA` welds the contact: a dynamo polarised the wrong way does that when its cut-out closes. */
function cutoutState({ bobbin, pullAt, releaseAt }: Puller & { readonly releaseAt: number }, weldA: number): StateSpec {
  return {
    id: 'cutout', values: ['open', 'closed', 'welded'], rest: 'open', made: 'closed',
    wants(view, value) {
      // Reverse current goes against the shunt: the iron passes through zero before it could hold the other way.
      const turns = bobbin.alongShunt(view)
      if (value === 'welded') return null
      if (value === 'open') return turns >= pullAt ? { value: 'closed', afterMs: 15 } : null
      if (Math.abs(view.amps('cutout-contact')) > weldA) return { value: 'welded', afterMs: 5 }
      return turns < releaseAt ? { value: 'open', afterMs: 15 } : null
    },
  }
}

function regulator(pullers: readonly Puller[], ctx: BuildContext): RegulatorSpec {
  return {
    id: 'regulator',
    closedOhm: ctx.number(['regulatorContactOhm'], practice(0.02, 'a regulating contact in use')),
    openOhm: ctx.number(['fieldResistorOhm'], practice(60 * (ctx.systemV / 12) ** 2, 'a field resistor of usual size')),
    reach: (view) => Math.max(...pullers.map(({ bobbin, pullAt }) => Math.abs(bobbin.ampereTurns(view)) / pullAt)),
  }
}
