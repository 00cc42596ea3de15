import type * as z from 'zod'
import type { Assume, Params } from './schema.ts'
import type { Assumption, EngineSpeeds, WiringPart } from './wiring.ts'

/**
 * What one kind of part brings: its ends, its parameters, its law, what can fail in it and what it is in
 * plain words. A law is data or a function of `Now`; it never reads a part's name, its role or its neighbours.
 */
export interface PartKind {
  readonly kind: string
  /** One or two sentences for a person who has never opened one. */
  readonly plain: string
  /** Parameters as they stand in the record; absent means the kind's default. */
  readonly params: z.ZodObject
  /** The kind's names of the ends of a part with these parameters, with the usual marking of each. */
  terminals(params: Params): readonly TerminalSpec[]
  /** What can fail in a part with these parameters. */
  fails(params: Params): readonly FailureSpec[]
  /** What is wrong inside parameters of the right shape: an axis or an end that is not there. Paths are inside the parameters. */
  check?(params: Params): readonly ParamProblem[]
  /** Between all its ends it lets current through or not, and takes none: a switch, a fuse. */
  readonly passes?: true
  /** The ends of a battery. */
  readonly posts?: { readonly plus: string; readonly minus: string }
  build(part: WiringPart, ctx: BuildContext): PartModel
}

export interface ParamProblem { readonly path: readonly string[]; readonly expected: string; readonly received: string; readonly valid?: readonly string[] }

export interface TerminalSpec { readonly is: string; readonly marking: string; readonly what: string }

/** One way in which a part of this kind fails; `fault` is the same text the command line takes, with `*` for the part. */
export interface FailureSpec { readonly what: string; readonly fault: string; readonly likelihood: 'common' | 'seen' | 'rare' }

/** What a part kind may ask while it builds its model. */
export interface BuildContext {
  readonly systemV: number
  readonly earth: 'negative' | 'positive' | 'none'
  readonly engine: EngineSpeeds
  readonly assume: Assume
  /**
   * The stated number, or the default; a default is recorded as assumed, with its source, and one that takes
   * finding out is asked for only then. Path is inside the parameters.
   */
  number(path: readonly (string | number)[], fallback: Default | (() => Default)): number
  /** The stated choice, or the usual one, which is then recorded as assumed. The path is inside the parameters, or one key. */
  choice<T extends string | boolean>(path: string | readonly string[], usual: T, why: string): T
  note(assumption: Assumption): void
}

/** A default value, why it is taken and where it comes from. */
export interface Default { readonly value: number; readonly why: string; readonly source: string }

export interface PartModel {
  readonly elements: readonly ElementSpec[]
  readonly states?: readonly StateSpec[]
  readonly phase?: PhaseSpec
  readonly machines?: readonly MachineSpec[]
  readonly regulators?: readonly RegulatorSpec[]
  readonly lamps?: readonly LampSpec[]
  readonly dials?: readonly DialSpec[]
  readonly axes?: readonly AxisSpec[]
  /** It turns with the engine, or stands as the engine left it. */
  readonly turns?: true
}

/** A two-ended element between two of the kind's ends (or inner nodes, named with a leading `~`). Current is positive from `from` to `to`. */
export interface ElementSpec {
  /** Inside the part: empty for a part of a single element. */
  readonly id: string
  readonly from: string
  readonly to: string
  readonly law: Law | ((now: Now) => Law)
  /** How the element is counted: loads and sources make the balance; contacts can be held or burnt. A contact's or joint's law that moves is a resistance or open. */
  readonly does: 'load' | 'source' | 'contact' | 'joint' | 'winding'
  /** Its current makes the sparks: without it the engine does not run. */
  readonly sparks?: true
  /** The part's own axes that move it. */
  readonly axes?: readonly string[]
  /** Volts at which a load counts as rated, where it has such a figure. */
  readonly ratedV?: number
  /** Lowest per cent of rated volts at which the load counts as fed; a lamp has its own classes. */
  readonly fedFrom?: number
}

/** Every law is non-decreasing in its voltage: the inner problem is convex. All SI. */
export type Law =
  | { readonly kind: 'open' }
  /** Zero ohm merges the ends. */
  | { readonly kind: 'resistor'; readonly ohm: number }
  /** I = I0·u·(u² + e²)^(−q/2) with u = V/ratedV, I0 = ratedW/ratedV, e = coldRatio^(−1/q), q = 1 less the exponent of the current. */
  | { readonly kind: 'filament'; readonly ratedV: number; readonly ratedW: number; readonly coldRatio: number }
  /** Conducts from `from` to `to`: I = Is·(exp(Vj/(n·Vt)) − 1), V = Vj + I·ohm, with Is set by forwardV at ratedA. */
  | { readonly kind: 'diode'; /** Over junction and resistance together. */ readonly forwardV: number; readonly ratedA: number; readonly emission: number; readonly ohm: number }
  /** EMF between `from` (+) and `to` behind a resistance; above counterV it takes charge, behind its own resistance for that. */
  | { readonly kind: 'battery'; readonly emfV: number; readonly ohm: number; readonly counterV: number; readonly chargeOhm: number }
  /** EMF with `from` positive, behind a resistance. */
  | { readonly kind: 'source'; readonly emfV: number; readonly ohm: number }

/** What a law may read: the setting, the part's own states and phase, and what was left from the step before. */
export interface Now {
  state(id: string): string
  readonly phase: string
  /** Position name of a stepped axis, number of a continuous one. */
  position(axis: string): string | number
  readonly engineRpm: number
  /** True while the engine stands with the breaker's points apart. */
  readonly pointsOpen: boolean
  readonly battery: 'full' | 'low'
  /** The EMF found for one of the part's machines. */
  emf(machine: string): number
  /** Mean resistance found for one of the part's regulating contacts. */
  regulatorOhm(regulator: string): number
  /** A number kept by the part between state steps (a coasting motor's EMF). */
  kept(state: string): number
}

/** What a state rule, a phase or a machine reads of the inner solution. Ids are the part's own. */
export interface View {
  amps(element: string): number
  volts(from: string, to: string): number
  readonly now: Now
}

/** An inner state that moves by itself: contacts, a blown fuse, a running motor. */
export interface StateSpec {
  readonly id: string
  readonly values: readonly string[]
  readonly rest: string
  /** The element whose own state it is, where a part has one of each for several: the fuses of a box. */
  readonly element?: string
  /** The value that counts as made when standing states are sought; absent: the state is not tried. */
  readonly made?: string
  /** By value: what a person must be told of the part while it holds, as in `has blown`. */
  readonly tells?: Readonly<Record<string, string>>
  /** The value it wants and the time it takes to get there; null when it is content. */
  wants(view: View, value: string): { readonly value: string; readonly afterMs: number } | null
  /** A number to keep when the state moves, read by laws as `kept(id)`. */
  keeps?(view: View, from: string, to: string): number
  /** A number to keep each time everything has come to rest, so that the next setting can start from it. */
  keepsAtRest?(view: View, value: string): number
}

/** Inner positions that a part goes through by itself. */
export interface PhaseSpec {
  readonly names: readonly string[]
  readonly start: string
  /** The phase that follows, or null when the part rests in this one. */
  next(view: View, phase: string): string | null
  /** That it cycles at all is trouble: a breaker that opens again and again. */
  readonly warns?: true
  /** Said of the whole cycle once it is known: by the views of its phases. */
  rate?(views: ReadonlyMap<string, View>): string
  /** Share of the time that each phase of the whole cycle lasts, where it can be told. */
  shares?(views: ReadonlyMap<string, View>): ReadonlyMap<string, number>
}

/** A machine whose EMF depends on its own field: solved around the inner problem from residual magnetism upward. */
export interface MachineSpec {
  readonly id: string
  /** EMF that the present field gives, V, signed. */
  emf(view: View): number
  /** EMF from residual magnetism alone, V, signed; zero at standstill. */
  residual(now: Now): number
  /** Largest EMF the machine can reach at this speed, V, signed as the residual. */
  ceiling(now: Now): number
}

/** A regulating contact in a field circuit: its mean resistance is found so that `reach` comes to 1. */
export interface RegulatorSpec {
  readonly id: string
  readonly closedOhm: number
  readonly openOhm: number
  /** What is sensed over what it is set to: below 1 the contact stays closed. */
  reach(view: View): number
}

/** A lamp to report: the element that glows. */
export interface LampSpec {
  readonly id: string
  readonly element: string
  readonly ratedV: number
  /** Where light follows the current (LED) and not the volts: the current at rated light, A. */
  readonly ratedA?: number
  /** Further elements whose current gives light in the same lamp. */
  readonly beside?: readonly string[]
  readonly title?: string
  readonly colour?: string
}

/** A needle on a scale. It follows the mean of what moves it over the cycles of parts that tell how long each of their phases lasts. */
export interface DialSpec {
  readonly id: string
  readonly unit: string
  /** What moves it: amps, or their square where heat does. */
  moves(view: View): number
  /** Where the needle stands at that mean. */
  shows(mean: number): number
}

/** A movable axis of a control. */
export interface AxisSpec {
  readonly id: string
  readonly title: string
  readonly positions: readonly string[]
  readonly range?: { readonly from: number; readonly to: number; readonly unit?: string }
  /** Numbers of the range between which what it moves changes evenly. */
  readonly bends?: readonly number[]
  readonly rest: string | number
  readonly springsFrom?: readonly string[]
  /** Between two positions both are made for a moment; otherwise neither is. */
  readonly makeBeforeBreak?: boolean
  readonly movedBy: string
  /** Position by engine state, where the axis follows the engine (oil pressure) unless it is set. */
  readonly follows?: Readonly<Record<string, string>>
}
