import type { Wiring } from '../record/index.ts'
import type { Layers } from './layers.ts'
import type { Manner } from './manner.ts'
import type { Measure } from './measure-items.ts'
import type { PathGraph } from './path-graph.ts'
import type { Places } from './place-items.ts'
import type { Ranks } from './rank-nodes.ts'
import type { Routed } from './route-channel.ts'

/** How the layers stand on the sheet, from the top. */
export interface Stack {
  /** Centre line of each layer, and its lower edge. */
  readonly centre: readonly number[]
  readonly bottom: readonly number[]
  /** y of each track of each channel. */
  readonly trackY: readonly (readonly number[])[]
  readonly routes: readonly ReadonlyMap<number, Routed>[]
  /** Where each wire is lettered: the middle of a straight stretch. */
  readonly labels: ReadonlyMap<string, { readonly port: number, readonly y: number, readonly upright: boolean }>
}

/** The sheet to fill, in px at the size where lettering is 12 px high. A drawing that needs more becomes larger. */
export interface Sheet { readonly width: number; readonly height: number }

/** Everything that the steps of the layout have found so far. */
export interface Layout {
  readonly manner: Manner
  readonly wiring: Wiring
  readonly graph: PathGraph
  readonly ranks: Ranks
  readonly layers: Layers
  readonly measures: readonly Measure[]
  readonly places: Places
  readonly stack: Stack
}
