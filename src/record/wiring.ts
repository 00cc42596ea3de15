import type {
  Assume, Colour, Duty, Params, Passage, Place, Positions, RecordLoom, Run, Unknown, Vehicle,
} from './schema.ts'

/** The record resolved for one vehicle: flat, checked, nothing conditional left. Maps are in order of id. */
export interface Wiring {
  readonly recordId: string
  readonly title: string
  readonly vehicle: Vehicle
  readonly systemV: 6 | 12 | 24
  readonly earth: 'negative' | 'positive' | 'none'
  readonly engine: EngineSpeeds
  readonly assume: Assume
  readonly metals: ReadonlyMap<string, { readonly id: string; readonly title: string }>
  readonly parts: ReadonlyMap<string, WiringPart>
  readonly splices: ReadonlyMap<string, { readonly id: string; readonly place?: string; readonly loom?: string }>
  readonly wires: ReadonlyMap<string, WiringWire>
  readonly fixings: ReadonlyMap<string, WiringFixing>
  /** One joint for each pair of ways that meet in a connector. Id `connector.wayA`. */
  readonly matings: ReadonlyMap<string, WiringFixing>
  readonly unmatched: readonly UnmatchedWay[]
  /** Ends of parts, `part:terminal`, that nothing is joined to: an unused blade, or an earth that was forgotten. */
  readonly unjoined: readonly string[]
  readonly shorted: readonly ShortedBattery[]
  readonly overlapping: readonly Overlap[]
  readonly looms: ReadonlyMap<string, WiringLoom>
  readonly places: ReadonlyMap<string, Place>
  readonly passages: ReadonlyMap<string, Passage>
  readonly runs: ReadonlyMap<string, Run>
  readonly duties: ReadonlyMap<string, Duty>
  readonly limits: ReadonlyMap<string, { readonly never: Positions; readonly why?: string }>
  /** By id, in words: which vehicles the items of the record are for that are not in this one. */
  readonly leftOut: ReadonlyMap<string, string>
  /** What resolving had to assume, for example an option taken as usual. */
  readonly assumed: readonly Assumption[]
  /** Layout hints, read by drawings only. */
  readonly layout: { readonly order?: readonly string[]; readonly circuits?: Readonly<Record<string, readonly string[]>> }
}

export interface EngineSpeeds { readonly crankingRpm: number; readonly idleRpm: number; readonly cruiseRpm: number }

/** A value taken because the record does not state it: where, what, why and on whose word. */
export interface Assumption { readonly path: string; readonly value: unknown; readonly why: string; readonly source: string }

export interface WiringPart {
  readonly id: string
  readonly kind: string
  readonly title: string
  readonly tag?: string
  readonly role?: string
  readonly place?: string
  /** Parameters with the fitting parameter sets laid over them; defaults are the kind's business. */
  readonly params: Params
  /** By terminal id. */
  readonly terminals: ReadonlyMap<string, WiringTerminal>
}

export interface WiringTerminal {
  readonly id: string
  /** The kind's name of this end. */
  readonly is: string
  readonly marking: string
  readonly form?: string
  readonly title?: string
}

export interface WiringWire {
  readonly id: string
  readonly tag?: string
  readonly role?: string
  readonly ends: readonly [WiringEnd, WiringEnd]
  readonly cable?: string
  readonly sizeMm2?: number | Unknown
  readonly sizeAwg?: string
  readonly sizeStrands?: string
  readonly copperDiameterMm?: number | Unknown
  readonly colour?: Colour | 'bare' | Unknown
  /** A loom's id, or `separate`. */
  readonly loom?: string
  readonly runs?: readonly string[]
  readonly lengthMm?: number | Unknown
  readonly ohm?: number | Unknown
}

export interface WiringEnd {
  /** `part:terminal`, `half:way`, a splice or a metal; null where the end is unknown or loose. */
  readonly at: string | null
  readonly state: 'joined' | 'unknown' | 'loose'
  readonly place?: string
  readonly leaves?: string
  readonly tailMm?: number | Unknown
  readonly fitting?: string
  readonly jointOhm?: number | Unknown
}

export interface WiringFixing {
  readonly id: string
  readonly title?: string
  readonly joins: readonly [string, string]
  readonly ohm?: number | Unknown
}

/** A way of a connector half that meets no other way, with what people call the half and the wires that end in it; `isAlone` where the whole other half is not in this vehicle. */
export interface UnmatchedWay { readonly half: string; readonly title: string; readonly way: string; readonly wires: readonly string[]; readonly why: string; readonly isAlone?: true }

/** A battery whose two posts meet over these wires, fixings and matings alone; for which vehicles each is meant, and what to do. */
export interface ShortedBattery { readonly part: string; readonly through: readonly string[]; readonly sentence: string }

/** Two wires, or two fixings, that join the same two points and look like editions of one whose years overlap; and what to do. */
export interface Overlap { readonly items: readonly [string, string]; readonly sentence: string }

export interface WiringLoom {
  readonly id: string
  readonly title: string
  readonly points: RecordLoom['points']
  readonly branches: RecordLoom['branches']
  /** By branch: the runs of the body it lies on in this vehicle. */
  readonly lies: ReadonlyMap<string, readonly string[]>
}
