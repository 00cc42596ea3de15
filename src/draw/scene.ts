import type { ElementSpec, PartModel, WiringPart } from '../record/index.ts'
import type { WireColour } from './wire-colours.ts'

/** A point of the drawing, in px at the size where its lettering is 12 px high. */
export type Spot = readonly [number, number]

/** What a stroke or an area is drawn with: a tone of the look, or a wire's own colour. */
export type Tone = 'ink' | 'soft' | 'rule' | 'bad' | 'doubtful' | 'live' | 'lamp' | 'sheet' | 'casing' | 'none' | { readonly css: string }

export type Shape = LineShape | CircleShape | RectShape | TextShape

export interface LineShape {
  readonly kind: 'line'
  readonly points: readonly Spot[]
  readonly width: number
  readonly tone: Tone
  readonly dash?: readonly number[]
  readonly dashFrom?: number
  /** Share of full colour, 1 when absent. */
  readonly strength?: number
  /** Closed and filled with this tone. */
  readonly fill?: Tone
}

export interface CircleShape {
  readonly kind: 'circle'
  readonly at: Spot
  readonly r: number
  readonly width: number
  readonly tone: Tone
  readonly fill: Tone
  readonly fillStrength?: number
}

export interface RectShape {
  readonly kind: 'rect'
  readonly x: number
  readonly y: number
  readonly w: number
  readonly h: number
  readonly r: number
  readonly width: number
  readonly tone: Tone
  readonly fill: Tone
}

export interface TextShape {
  readonly kind: 'text'
  /** Start, middle or end of the base line, by `anchor`. */
  readonly at: Spot
  readonly text: string
  readonly size: number
  readonly weight: 400 | 600
  readonly anchor: 'start' | 'middle' | 'end'
  readonly tone: Tone
  /** Turned a quarter to the left: read from below upward. */
  readonly upright?: boolean
  /** A letter that belongs inside its own symbol. */
  readonly inside?: boolean
}

/** A path drawing: where everything stands. `sceneShapes` turns it into shapes for one solved setting. */
export interface Scene {
  /** Whether its columns go the other way round than they were ordered. */
  readonly mirrored: boolean
  /** Size of the lettering. */
  readonly letter: number
  readonly width: number
  readonly height: number
  readonly rails: readonly Rail[]
  readonly wires: readonly SceneWire[]
  readonly pieces: readonly ScenePiece[]
  readonly splices: readonly SceneSplice[]
  readonly marks: readonly SceneMark[]
  readonly paths: readonly PathNumber[]
  readonly groups: readonly PathGroup[]
  /** The circuits of the whole vehicle, each of which can be drawn alone. */
  readonly circuits: readonly string[]
  /** How the drawing is to be read, below it. */
  readonly foot: { readonly lines: readonly string[]; readonly at: Spot }
}

/** `point` is the battery's post of the supply rail; null for the earth rail, which is the vehicle's metal. */
export interface Rail { readonly marking: string; readonly y: number; readonly x0: number; readonly x1: number; readonly point: string | null }

/** A wire's line from its first end to its second. A fixing, and the battery's hold on its rail, are drawn in ink: they have no insulation. */
export interface SceneWire {
  readonly id: string
  readonly kind: 'wire' | 'fixing' | 'rail'
  readonly points: readonly Spot[]
  readonly colour: WireColour
  /** Width of the wire itself. */
  readonly width: number
  readonly label: { readonly text: string; readonly at: Spot; readonly upright: boolean } | null
  /** The two points that it joins, as in the wiring. */
  readonly ends: readonly [string | null, string | null]
}

/** Part of a part, or the whole of it, standing in the drawing. */
export interface ScenePiece {
  readonly id: string
  readonly part: WiringPart
  readonly model: PartModel | undefined
  readonly form: 'inline' | 'comb' | 'box'
  readonly symbol: string
  /** The elements drawn here. */
  readonly elements: readonly ElementSpec[]
  /** Centre line of each core: one for an inline symbol, one for each limb of a comb. */
  readonly cores: readonly PieceCore[]
  readonly box: { readonly x: number; readonly y: number; readonly w: number; readonly h: number } | null
  readonly pins: readonly ScenePin[]
  /** Lines of ink that lead from core to pins. */
  readonly leads: readonly PieceLead[]
  /** Level lines from `at` downward, or upright ones from `at` to the right; in a line the live text follows the title. */
  readonly name: { readonly lines: readonly NameLine[]; readonly upright: boolean; readonly isLine: boolean; readonly at: Spot }
  /** Column of the drawing by which the piece is found. */
  readonly path: number
}

/** A lead that belongs to the symbol: what it carries is that of one element, or of the wires at one point. */
export interface PieceLead { readonly points: readonly Spot[]; readonly point: string; readonly element: string | null }

export interface PieceCore {
  readonly x: number
  readonly top: number
  readonly bottom: number
  readonly element: ElementSpec | undefined
  /** The kind's name of the end at the top of the core. */
  readonly upper: string
}

/** A line beside a symbol; a live one is filled in from the solved setting. */
export interface NameLine { readonly text: string; readonly live?: LiveLine; readonly soft?: boolean }

/** What a live line says, and the texts that it must have room for. */
export interface LiveLine {
  readonly says: 'lamp' | 'axis' | 'state' | 'fuse' | 'phase' | 'dial' | 'battery' | 'battery-amps'
  readonly key?: string
  readonly prefix?: string
  readonly rest?: string
  readonly room: readonly string[]
}

export interface ScenePin {
  readonly terminal: string
  readonly is: string
  readonly marking: string
  readonly at: Spot
  readonly side: 'top' | 'bottom'
  readonly showMarking: boolean
}

export interface SceneSplice { readonly id: string; readonly kind: 'splice' | 'mating' | 'loose'; readonly at: Spot; readonly bars: readonly (readonly Spot[])[]; readonly text: string }
export interface SceneMark { readonly id: string; readonly kind: 'earth'; readonly at: Spot; readonly lines: readonly string[] }
export interface PathNumber { readonly number: number; readonly x: number; readonly y: number }
export interface PathGroup { readonly lines: readonly string[]; readonly x0: number; readonly x1: number; readonly y: number }

/** Letter size on a drawing, px at the size it is read. */
export const LETTER = 12
/** From one line of lettering to the next. */
export const LINE = 14
