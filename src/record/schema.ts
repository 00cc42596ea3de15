import * as z from 'zod'
import { allowFits } from './allow-fits.ts'
import type { Json } from './path.ts'

/** The version of the record's and the job's file format. */
export const FORMAT_VERSION = 1

/** What the schema needs of a part kind: its name, the shape of its parameters, and what it is in plain words. */
export interface KindSchema { readonly kind: string; readonly params: z.ZodObject; readonly plain?: string }

/** Ids are short and readable; a colon is kept for `part:terminal`, a dot for `control.axis`. */
export const ID_PATTERN = /^[A-Za-z0-9][A-Za-z0-9_+-]{0,39}$/
/** Terminals carry the marking as their id: `58`, `D+`, `31b`, `15/54`. */
export const TERMINAL_PATTERN = /^[A-Za-z0-9+-][A-Za-z0-9+/_-]{0,19}$/

export const id = z.string().regex(ID_PATTERN).meta({ id: 'Id' })
const terminalId = z.string().regex(TERMINAL_PATTERN).meta({ id: 'TerminalId' })
export const text = z.string().max(2000)

/** A value that may also be stated as not known, which differs from absent (the default) and from none. */
export function known<T extends z.ZodType>(value: T) {
  return z.union([value, z.literal('unknown')])
}

export const lengthMm = known(z.number().min(0).max(100_000))
const ohm = known(z.number().min(0).max(1e9))

/** All of one condition must hold; a `fits` holds when any of its conditions does. */
const condition = z.strictObject({
  years: z.strictObject({ from: z.int().optional(), to: z.int().optional() }).optional().describe('Model years, both included; an end that is left out is open.'),
  serials: z.strictObject({ series: id, from: text.optional(), to: text.optional() }).optional().describe('Numbers of one series, both included.'),
  markets: z.array(id).min(1).optional().describe('One of these markets.'),
  with: z.array(id).min(1).optional().describe('All of these options.'),
  without: z.array(id).min(1).optional().describe('None of these options.'),
}).meta({ id: 'Condition', description: 'All that is stated here must hold.' })

const fits = z.array(condition).min(1).meta({ id: 'Fits', description: 'For which vehicles this is meant: any one of the conditions is enough. Left out: for every vehicle.' })
export const fitsSchema = fits

export const point = z.string().min(1).max(80)
  .meta({ id: 'Point', description: 'A terminal as part:terminal, a way of a connector half as half:way, or the id of a splice or a metal.' })

/** What every item may carry. */
const named = {
  tag: text.optional().describe('What people call it; it may repeat or change.'),
  role: text.optional().describe('What stays the same when it is replaced over the years; one of a role is in a vehicle.'),
  fits: fits.optional(),
}
const placed = known(id).optional().describe('The place of the body where it sits.')
const form = known(text).optional().describe('Its form: ring 6 mm, blade 6.3 mm, bullet, screw …')
const note = text.optional().describe('For people; nothing reads it.')

const wireEnd = z.strictObject({
  at: z.union([point, z.strictObject({ place: known(id), state: z.enum(['unknown', 'loose']) })])
    .describe('The point it is joined to; or, where it is not known or hangs loose, the place and which of the two.'),
  leaves: id.optional().describe('The point of the loom at which the wire leaves it.'),
  tailMm: lengthMm.optional().describe('Free length from there to its end.'),
  fitting: known(text).optional().describe('What is crimped or soldered on it.'),
  jointOhm: ohm.optional().describe('Resistance of this joint, if measured.'),
}).meta({ id: 'WireEnd' })

export const colour = z.strictObject({
  base: known(text.meta({ examples: ['red'] })).describe('The colour of the insulation, as a word.'),
  tracers: z.array(text).optional().describe('The stripes, as words.'),
  letters: text.optional().describe('The letters as read on the paper or the wire, whatever practice they follow.'),
})

const wire = z.strictObject({
  ...named,
  ends: z.tuple([wireEnd, wireEnd]).describe('Amps are positive from the first end to the second.'),
  cable: known(text).optional().describe('Kind of cable, for its table of resistance: see docs/sources.md.'),
  sizeMm2: known(z.number().positive().max(400)).optional().describe('Copper, in mm2. Give the size once, in the way it is known.'),
  sizeAwg: text.optional().describe('American wire gauge: 14, 4/0 …'),
  sizeStrands: text.optional().describe('Strands / diameter: 28/0.30 in mm, 44/.012 in inches.'),
  copperDiameterMm: known(z.number().positive().max(30)).optional().describe('Measured over the bare copper.'),
  colour: z.union([colour, z.literal('bare'), z.literal('unknown')]).optional(),
  loom: z.union([id, z.literal('separate')]).optional().describe('The loom it lies in, or separate.'),
  runs: z.array(id).optional().describe('For a wire outside any loom: the runs it lies on.'),
  lengthMm: lengthMm.optional().describe('As made; left out, the route gives it.'),
  ohm: ohm.optional().describe('A measured resistance replaces the one from size and length.'),
  note,
}).meta({ id: 'Wire', description: 'A wire between two points.' })

const splice = z.strictObject({
  ...named, place: placed, loom: id.optional().describe('The loom it lies in, perhaps under its tape.'), form, note,
}).describe('A point where wires meet without a part.')

const metal = z.strictObject({ title: text, role: named.role, fits: named.fits }).describe('A piece of metal that carries current: body, chassis, engine, wing.')

const fixing = z.strictObject({
  title: text.optional(), role: named.role, fits: named.fits,
  joins: z.tuple([point, point]).describe('The part\'s terminal and the metal, or two metals.'),
  form, place: placed, ohm: ohm.optional().describe('Resistance, if measured.'),
}).describe('How a part sits on a metal, or one metal on another, so that current passes: an earth.')

const terminal = z.strictObject({
  is: text.optional().describe('Which end of the part kind this is (docs/parts.md), where its own name differs.'),
  marking: known(text).optional().describe('What is stamped beside it.'),
  form, title: text.optional(), fits: fits.optional(),
})

const half = z.strictObject({
  title: text.optional(), role: named.role, fits: named.fits,
  connector: id, side: z.enum(['a', 'b']), loom: id.optional(), form,
  ways: z.array(terminalId).min(1).describe('Its ways; wires end on half:way.'),
}).describe('One half of a connector.')

const connector = z.strictObject({
  title: text, place: placed,
  ways: z.array(z.tuple([terminalId, terminalId])).optional().describe('Which way of side a meets which of side b; left out, ways of the same name meet.'),
  jointOhm: ohm.optional().describe('Resistance of each pair that meets.'), fits: fits.optional(),
})

const loom = z.strictObject({
  title: text, role: named.role, fits: named.fits, madeFor: fits.optional().describe('The vehicles it was made for, if it lies in others too.'),
  points: z.record(id, z.strictObject({ title: text.optional(), place: placed })).describe('Ends and breakouts.'),
  branches: z.record(id, z.strictObject({
    from: id, to: id, lengthMm: lengthMm.optional().describe('As made.'), covering: known(text).optional().describe('Tape, sleeve, braid …'),
  })).describe('The loom\'s own tree.'),
  lies: z.record(id, z.strictObject({ branch: id, runs: z.array(id).min(1), fits: fits.optional() })).optional()
    .describe('Which branch lies on which runs of the body, and for which vehicles.'),
})

const place = z.strictObject({
  title: text,
  xMm: known(z.number()).optional().describe('Along the vehicle, from any origin that all places share.'),
  yMm: known(z.number()).optional().describe('Across it.'),
  zMm: known(z.number()).optional().describe('Upwards.'),
  fits: fits.optional(),
}).describe('A point in the body.')
const run = z.strictObject({
  from: id, to: id, lengthMm, passages: z.array(id).optional(), besideMetal: id.optional().describe('A metal that it lies on, where it may chafe.'), fits: fits.optional(),
}).describe('A stretch between two places.')
const passage = z.strictObject({
  title: text, form: known(z.enum(['hole', 'tube', 'groove', 'clip'])),
  insideMm: known(z.number().positive()).optional().describe('Inner diameter.'),
  largestFittingMm: known(z.number().positive()).optional().describe('The largest rigid fitting that goes through.'), fits: fits.optional(),
})

const positions = z.record(z.string(), z.array(z.string()).min(1))
  .meta({ id: 'Positions', description: 'By control or control.axis the positions meant; engine is a key too. All keys must hold, any one position of a key is enough.' })

const duty = z.strictObject({
  title: text, when: positions,
  must: z.array(z.string()).optional().describe('Parts, or part.filament, that must work then.'),
  mustNot: z.array(z.string()).optional(), may: z.array(z.string()).optional(),
  fits: fits.optional(),
}).describe('What must, must not or may work in these positions.')

const supply = z.strictObject({
  systemV: known(z.union([z.literal(6), z.literal(12), z.literal(24)])),
  earth: known(z.enum(['negative', 'positive', 'none'])).describe('Which pole is earthed; none is an insulated return.'), fits: fits.optional(),
})

const engine = z.strictObject({
  crankingRpm: known(z.number().positive()), idleRpm: known(z.number().positive()), cruiseRpm: known(z.number().positive()), fits: fits.optional(),
})

const claim = z.strictObject({
  about: z.array(z.string()).min(1).describe('The path of the fact in this document.'),
  says: z.json() as unknown as z.ZodType<Json>, how: z.enum(['papers', 'seen', 'measured', 'assumed']),
  source: text.optional(), by: text.optional(), when: text.optional(),
}).describe('What one source says about one fact.')

const assume = z.strictObject({
  jointOhm: z.number().min(0).optional(), contactOhm: z.number().min(0).optional(),
  relayContactOhm: z.number().min(0).optional(), fixingOhm: z.number().min(0).optional(),
  fuseOhm: z.number().min(0).optional(), wireOhm: z.number().min(0).optional(), why: text.optional(),
}).describe('What the record\'s owner assumes in place of the general defaults.')

const vehicleOptions = z.record(id, z.boolean())

/** What is known of one vehicle; whatever is absent is not known. */
const edition = z.strictObject({
  year: z.int().optional(), serials: z.record(id, text).optional(), market: id.optional(), options: vehicleOptions.optional(),
})
export const vehicleSchema = z.strictObject({
  ...edition.shape,
  title: text.optional(),
  exceptions: z.array(z.strictObject({ item: id, asOf: edition, note: text.optional() })).optional()
    .describe('This part or loom is of another edition; a loom takes its wires, splices and halves with it.'),
})

const serialSeries = z.strictObject({
  title: text,
  prefixes: z.array(z.string()).optional().describe('Prefixes in the order they were made, for series such as A 1 … A 9999, B 1 …; a number follows the prefix.'),
})

const partBase = {
  title: text, tag: named.tag, role: named.role, place: placed, fits: named.fits,
  terminals: z.record(terminalId, terminal).optional().describe('Ends under names of their own; those that are left out keep the kind\'s (docs/parts.md).'), note,
}

/** A parameter that the kind does not know is a slip, never passed over; a kind may say that it takes any. */
function strictParams({ params }: KindSchema) {
  const conditional = allowFits(params, fits)
  return conditional.def.catchall ? conditional.partial() : conditional.partial().strict()
}

/** The parameters of a control row, winding set and so on differ by kind; each kind brings its own schema. */
function partSchema(kinds: readonly KindSchema[]) {
  const options = kinds.map((kind) => z.strictObject({
    kind: z.literal(kind.kind), ...partBase,
    params: strictParams(kind).optional().describe('docs/parts.md lists them with their defaults; what is left out takes its default, and is reported as assumed.'),
    paramSets: z.record(id, z.strictObject({ fits, params: strictParams(kind) })).optional().describe('Parameters of some vehicles only, laid over params.'),
  }).describe(kind.plain ?? kind.kind))
  return z.discriminatedUnion('kind', options as unknown as [typeof options[number], ...typeof options])
}

function contents(kinds: readonly KindSchema[]) {
  return {
    title: text, about: text.optional(),
    serials: z.record(id, serialSeries).optional(),
    markets: z.record(id, z.strictObject({ title: text })).optional(),
    options: z.record(id, z.strictObject({ title: text, usual: z.boolean().optional() })).optional(),
    supply: z.record(id, supply),
    engine: z.record(id, engine).optional(),
    assume: assume.optional(),
    metals: z.record(id, metal).optional(),
    parts: z.record(id, partSchema(kinds)),
    splices: z.record(id, splice).optional(),
    connectors: z.record(id, connector).optional(),
    halves: z.record(id, half).optional(),
    wires: z.record(id, wire).optional(),
    fixings: z.record(id, fixing).optional(),
    looms: z.record(id, loom).optional(),
    places: z.record(id, place).optional(),
    passages: z.record(id, passage).optional(),
    runs: z.record(id, run).optional(),
    duties: z.record(id, duty).optional(),
    limits: z.record(id, z.strictObject({ never: positions, why: text.optional(), fits: fits.optional() })).optional().describe('Combinations of positions that cannot occur.'),
    claims: z.record(id, claim).optional(),
    layout: z.strictObject({
      paths: z.record(z.string(), z.strictObject({ x: z.number(), y: z.number() })).optional(),
      order: z.array(z.string()).optional(),
      circuits: z.record(z.string(), z.array(z.string())).optional(),
      photos: z.record(z.string(), z.strictObject({ photo: text, x: z.number(), y: z.number() })).optional(),
    }).optional(),
  }
}

/** The schema of a record whose parts are of the given kinds; also the source of the published JSON Schema. */
export function recordSchema(kinds: readonly KindSchema[]) {
  return z.strictObject({
    format: z.literal('loomwright-record'), version: z.literal(FORMAT_VERSION), id, ...contents(kinds),
  })
}

export type DeepReadonly<T> = Json extends T ? T : T extends object ? { readonly [K in keyof T]: DeepReadonly<T[K]> } : T

export type WiringRecord = Omit<DeepReadonly<z.infer<ReturnType<typeof recordSchema>>>, 'parts'> & {
  readonly parts: Readonly<Record<string, RecordPart>>
}
export interface RecordPart {
  readonly kind: string
  readonly title: string
  readonly tag?: string
  readonly role?: string
  readonly place?: string
  readonly fits?: Fits
  readonly terminals?: Readonly<Record<string, RecordTerminal>>
  readonly params?: Params
  readonly paramSets?: Readonly<Record<string, { readonly fits: Fits; readonly params: Params }>>
  readonly note?: string
}
export type Params = Readonly<Record<string, unknown>>
export type Condition = DeepReadonly<z.infer<typeof condition>>
export type Fits = readonly Condition[]
export type RecordTerminal = DeepReadonly<z.infer<typeof terminal>>
export type RecordWire = DeepReadonly<z.infer<typeof wire>>
export type WireEnd = DeepReadonly<z.infer<typeof wireEnd>>
export type Colour = DeepReadonly<z.infer<typeof colour>>
export type RecordLoom = DeepReadonly<z.infer<typeof loom>>
export type Place = DeepReadonly<z.infer<typeof place>>
export type Run = DeepReadonly<z.infer<typeof run>>
export type Passage = DeepReadonly<z.infer<typeof passage>>
export type Duty = DeepReadonly<z.infer<typeof duty>>
export type Positions = DeepReadonly<z.infer<typeof positions>>
export type Claim = DeepReadonly<z.infer<typeof claim>>
export type Assume = DeepReadonly<z.infer<typeof assume>>
export type Vehicle = DeepReadonly<z.infer<typeof vehicleSchema>>
export type Edition = DeepReadonly<z.infer<typeof edition>>
export type Unknown = 'unknown'
