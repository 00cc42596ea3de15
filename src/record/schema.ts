import * as z from 'zod'
import { allowFits } from './allow-fits.ts'
import type { Json } from './path.ts'

/** The version of the record's and the job's file format. */
export const FORMAT_VERSION = 1

/** What the schema needs of a part kind: its name and the shape of its parameters. */
export interface KindSchema { readonly kind: string; readonly params: z.ZodObject }

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
  years: z.strictObject({ from: z.int().optional(), to: z.int().optional() }).optional(),
  serials: z.strictObject({ series: id, from: text.optional(), to: text.optional() }).optional(),
  markets: z.array(id).min(1).optional(),
  with: z.array(id).min(1).optional(),
  without: z.array(id).min(1).optional(),
}).meta({ id: 'Condition' })

const fits = z.array(condition).min(1).meta({ id: 'Fits' })
export const fitsSchema = fits

/** `part:terminal`, `half:way`, or the id of a splice or a metal. */
export const point = z.string().min(1).max(80).meta({ id: 'Point' })

const wireEnd = z.strictObject({
  at: z.union([point, z.strictObject({ place: known(id), state: z.enum(['unknown', 'loose']) })]),
  /** The point of the loom at which the wire leaves it, and the free length from there to its end. */
  leaves: id.optional(),
  tailMm: lengthMm.optional(),
  fitting: known(text).optional(),
  jointOhm: ohm.optional(),
}).meta({ id: 'WireEnd' })

export const colour = z.strictObject({
  base: known(text),
  tracers: z.array(text).optional(),
  /** The letters as read on the paper or the wire, whatever practice they follow. */
  letters: text.optional(),
})

const wire = z.strictObject({
  tag: text.optional(), role: text.optional(), fits: fits.optional(),
  ends: z.tuple([wireEnd, wireEnd]),
  cable: known(text).optional(),
  sizeMm2: known(z.number().positive().max(400)).optional(),
  sizeAwg: text.optional(),
  sizeStrands: text.optional(),
  copperDiameterMm: known(z.number().positive().max(30)).optional(),
  colour: z.union([colour, z.literal('bare'), z.literal('unknown')]).optional(),
  loom: z.union([id, z.literal('separate')]).optional(),
  /** For a wire outside any loom: the runs it lies on. */
  runs: z.array(id).optional(),
  lengthMm: lengthMm.optional(),
  /** A measured resistance replaces the one from size and length. */
  ohm: ohm.optional(),
  note: text.optional(),
}).meta({ id: 'Wire' })

const splice = z.strictObject({
  tag: text.optional(), role: text.optional(), fits: fits.optional(),
  place: known(id).optional(), loom: id.optional(), form: known(text).optional(), note: text.optional(),
})

const metal = z.strictObject({ title: text, role: text.optional(), fits: fits.optional() })

const fixing = z.strictObject({
  title: text.optional(), role: text.optional(), fits: fits.optional(),
  joins: z.tuple([point, point]), form: known(text).optional(), place: known(id).optional(), ohm: ohm.optional(),
})

const terminal = z.strictObject({
  /** The name this end has in the part kind, where the marking differs from it. */
  is: text.optional(), marking: known(text).optional(), form: known(text).optional(),
  title: text.optional(), fits: fits.optional(),
})

const half = z.strictObject({
  title: text.optional(), role: text.optional(), fits: fits.optional(),
  connector: id, side: z.enum(['a', 'b']), loom: id.optional(), form: known(text).optional(),
  ways: z.array(terminalId).min(1),
})

const connector = z.strictObject({
  title: text, place: known(id).optional(),
  /** Which way of side a meets which of side b; without it, ways of the same name meet. */
  ways: z.array(z.tuple([terminalId, terminalId])).optional(),
  jointOhm: ohm.optional(), fits: fits.optional(),
})

const loom = z.strictObject({
  title: text, role: text.optional(), fits: fits.optional(), madeFor: fits.optional(),
  points: z.record(id, z.strictObject({ title: text.optional(), place: known(id).optional() })),
  branches: z.record(id, z.strictObject({
    from: id, to: id, lengthMm: lengthMm.optional(), covering: known(text).optional(),
  })),
  /** Which branch lies on which runs of the body, and for which vehicles. */
  lies: z.record(id, z.strictObject({ branch: id, runs: z.array(id).min(1), fits: fits.optional() })).optional(),
})

const place = z.strictObject({
  title: text, xMm: known(z.number()).optional(), yMm: known(z.number()).optional(), zMm: known(z.number()).optional(), fits: fits.optional(),
})
const run = z.strictObject({
  from: id, to: id, lengthMm, passages: z.array(id).optional(), besideMetal: id.optional(), fits: fits.optional(),
})
const passage = z.strictObject({
  title: text, form: known(z.enum(['hole', 'tube', 'groove', 'clip'])),
  insideMm: known(z.number().positive()).optional(), largestFittingMm: known(z.number().positive()).optional(), fits: fits.optional(),
})

/** Positions of controls, `control` or `control.axis` to the positions meant, and the engine. */
const positions = z.record(z.string(), z.array(z.string()).min(1)).meta({ id: 'Positions' })

const duty = z.strictObject({
  title: text, when: positions,
  must: z.array(z.string()).optional(), mustNot: z.array(z.string()).optional(), may: z.array(z.string()).optional(),
  fits: fits.optional(),
})

const supply = z.strictObject({
  systemV: known(z.union([z.literal(6), z.literal(12), z.literal(24)])),
  earth: known(z.enum(['negative', 'positive', 'none'])), fits: fits.optional(),
})

const engine = z.strictObject({
  crankingRpm: known(z.number().positive()), idleRpm: known(z.number().positive()), cruiseRpm: known(z.number().positive()), fits: fits.optional(),
})

const claim = z.strictObject({
  about: z.array(z.string()).min(1), says: z.json() as unknown as z.ZodType<Json>, how: z.enum(['papers', 'seen', 'measured', 'assumed']),
  source: text.optional(), by: text.optional(), when: text.optional(),
})

/** What a record's owner assumes in place of the general defaults. */
const assume = z.strictObject({
  jointOhm: z.number().min(0).optional(), contactOhm: z.number().min(0).optional(),
  relayContactOhm: z.number().min(0).optional(), fixingOhm: z.number().min(0).optional(),
  fuseOhm: z.number().min(0).optional(), wireOhm: z.number().min(0).optional(), why: text.optional(),
})

const vehicleOptions = z.record(id, z.boolean())

/** What is known of one vehicle; whatever is absent is not known. */
const edition = z.strictObject({
  year: z.int().optional(), serials: z.record(id, text).optional(), market: id.optional(), options: vehicleOptions.optional(),
})
export const vehicleSchema = z.strictObject({
  ...edition.shape,
  title: text.optional(),
  /** This part or loom is of another edition; a loom takes its wires, splices and halves with it. */
  exceptions: z.array(z.strictObject({ item: id, asOf: edition, note: text.optional() })).optional(),
})

const serialSeries = z.strictObject({
  title: text,
  /** Prefixes in the order they were made, for series such as A 1 … A 9999, B 1 …; a number follows the prefix. */
  prefixes: z.array(z.string()).optional(),
})

const partBase = {
  title: text, tag: text.optional(), role: text.optional(), place: known(id).optional(), fits: fits.optional(),
  terminals: z.record(terminalId, terminal).optional(), note: text.optional(),
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
    params: strictParams(kind).optional(),
    paramSets: z.record(id, z.strictObject({ fits, params: strictParams(kind) })).optional(),
  }))
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
    /** Combinations of positions that cannot occur. */
    limits: z.record(id, z.strictObject({ never: positions, why: text.optional(), fits: fits.optional() })).optional(),
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
