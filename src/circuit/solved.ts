import type { Assumption, ENGINE_STATES } from '../record/index.ts'

/** The position of every control, the engine and the supply. What is not named is at rest. */
export interface Setting {
  /** By `control.axis`: a position's name, or a number for a continuous axis. */
  readonly controls: Readonly<Record<string, string | number>>
  readonly engine: EngineState
  readonly battery: 'full' | 'low'
  /** Starting phase by part. */
  readonly phases: Readonly<Record<string, string>>
}

export type EngineState = typeof ENGINE_STATES[number] | number

export type LampClass = 'off' | 'faint' | 'dim' | 'normal' | 'over'

/** One lamp, or one filament of it. Volts and per cent of the rated ones are magnitudes; `light` is a share of the rated light. */
export interface LampResult { readonly volts: number; readonly ratedV: number; readonly percent: number; readonly light: number; readonly class: LampClass }
/**
 * `amps` is positive from the wire's first end to its second, null where zero-ohm loops leave it undetermined; `volts` are those at its
 * two ends where they now sit (a fault may have swapped them), null where floating.
 */
export interface WireResult { readonly amps: number | null; readonly dropV: number | null; readonly volts: readonly [number | null, number | null] }
/** Where a needle stands on its scale; null where zero-ohm loops leave its amps undetermined. */
export interface DialResult { readonly shows: number | null; readonly unit: string }
/** What one element of a part takes: positive volts and amps from its first end to its second. */
export interface ElementResult { readonly volts: number | null; readonly amps: number | null }

/**
 * Kirchhoff's books: the node with the largest residual, and what the sources give against what is turned to heat, light and
 * charge, W. `lostW` is the sum of the four below it: in what is driven, in wires, joints and contacts, in the windings and
 * diodes of generators, and as charge into batteries.
 */
export interface Balance {
  readonly node: string
  readonly worstA: number
  readonly sourceW: number
  readonly lostW: number
  readonly loadW: number
  readonly wiresW: number
  readonly insideW: number
  readonly chargeW: number
}

/** One solution of the network with all states and phases fixed. */
export interface Solution {
  /** By `part:terminal`, splice, metal or `half:way`; null where no path leads there. */
  readonly voltages: Readonly<Record<string, number | null>>
  readonly wires: Readonly<Record<string, WireResult>>
  /** By `part`, or `part.filament` where a lamp has several. */
  readonly lamps: Readonly<Record<string, LampResult>>
  /** By `part` or `part.element`: every load, winding, contact and source. */
  readonly elements: Readonly<Record<string, ElementResult>>
  /** By `part.state`. */
  readonly states: Readonly<Record<string, string>>
  /** By part: the phase this solution holds in. */
  readonly at: Readonly<Record<string, string>>
  readonly floating: readonly string[]
  /** Points that no closed conductor joins to a source or to the earth side, and at which no load is fed: their volts are the earth side's own drop, through loads that stay dark. */
  readonly stray: readonly string[]
  readonly balance: Balance
}

/** What becomes of a part that has phases: it rests in one, or goes round a cycle at a rate class. */
export interface PhaseResult {
  readonly rests?: string
  readonly cycle?: readonly string[]
  readonly rate?: string
  /** The solution in each phase of the cycle, in its order. */
  readonly solutions?: readonly Solution[]
}

/** The whole answer for one setting. The solution's own fields show the resting phase, or the brightest phase of a cycle. */
export interface SolvedSetting extends Solution {
  readonly setting: Setting
  /** Where every axis stood, by `control.axis`: as set, as the engine moved it, or at rest. */
  readonly positions: Readonly<Record<string, string | number>>
  readonly outcome: 'rests' | 'chatters'
  /** The steps of a chatter, each with its solution. */
  readonly cycle?: readonly Solution[]
  readonly phases: Readonly<Record<string, PhaseResult>>
  /** By `part`: what each gauge shows, over whole cycles where something pulses. */
  readonly dials: Readonly<Record<string, DialResult>>
  /** Other standing states of the same setting. */
  readonly standing: readonly StandingState[]
  readonly assumed: readonly Assumption[]
  /** Sentences on what limits this answer: a combination that cannot occur, phases solved in pairs. */
  readonly notes: readonly string[]
}

export interface StandingState extends Solution {
  /** `holds once made` or `runs on`. */
  readonly name: string
  /** What that means, as a clause. */
  readonly said: string
  /** From which start it was reached. */
  readonly from: string
}

/** A fault laid on a network; data over the wiring, never an edit of it. */
export type Fault =
  | { readonly kind: 'open'; readonly id: string }
  | { readonly kind: 'ohms'; readonly id: string; readonly ohm: number }
  | { readonly kind: 'join'; readonly a: string; readonly b: string; readonly ohm?: number }
  | { readonly kind: 'swap'; readonly a: string; readonly b: string }
  | { readonly kind: 'set'; readonly part: string; readonly param: readonly string[]; readonly value: number | string }
  | { readonly kind: 'hold'; readonly part: string; readonly state: string; readonly value: string }
