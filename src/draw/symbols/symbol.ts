import type { ElementSpec } from '../../record/index.ts'
import type { LampResult } from '../../circuit/index.ts'
import type { CircleShape, LineShape, Shape, Spot, TextShape, Tone } from '../scene.ts'

/** How a part kind stands in a path drawing. */
export interface PartSymbol {
  /** Drawn in one piece even where its elements would fall into several. */
  readonly whole: boolean
  /** In a box, its contacts are drawn between the ends. */
  readonly contacts?: boolean
  /** Said inside the box, where the part is drawn as one without contacts. */
  readonly letter?: string
  /** Whether the markings of its ends are lettered when it is drawn in line. */
  readonly marked: boolean
  core(element: ElementSpec | undefined): Core
}

/** A symbol of two ends, upright between them. */
export interface Core {
  readonly half: number
  readonly height: number
  draw(view: CoreView): Shape[]
}

export interface CoreView {
  readonly x: number
  readonly top: number
  readonly bottom: number
  /** The kind's name of the end at the top. */
  readonly upper: string
  readonly element: ElementSpec | undefined
  readonly live: CoreLive
}

/** What a symbol may show of the solved setting. */
export interface CoreLive {
  readonly closed: boolean
  readonly fed: boolean
  readonly lamp: LampResult | null
  /** Bad news in the part's own state: a blown fuse. */
  readonly broken: boolean
}

export const STROKE = 1.6

export function line(points: readonly Spot[], width = STROKE, tone: Tone = 'ink', fill?: Tone): LineShape {
  return { kind: 'line', points, width, tone, fill }
}

export function ring(at: Spot, r: number, fill: Tone = 'sheet', fillStrength?: number): CircleShape {
  return { kind: 'circle', at, r, width: STROKE, tone: 'ink', fill, fillStrength }
}

export function letter(at: Spot, text: string, size = 14): TextShape {
  return { kind: 'text', at: [at[0], at[1] + size * 0.35], text, size, weight: 600, anchor: 'middle', tone: 'ink', inside: true }
}

/** Points of an arc about a centre, angles in degrees clockwise from the right. */
export function arc(at: Spot, r: number, from: number, to: number, steps = 12): Spot[] {
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = (from + (to - from) * i / steps) * Math.PI / 180
    return [at[0] + r * Math.cos(angle), at[1] + r * Math.sin(angle)] as const
  })
}
