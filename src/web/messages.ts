import type { DrawnGroup } from '../draw/index.ts'
import type { Vehicle } from '../record/index.ts'
import type { AssumedLine, Facts, PanelAxis, Pick, Setting, VehicleChoices } from '../tasks/index.ts'

/** What the page asks of its worker. */
export type Ask =
  | { readonly ask: 'open'; readonly text: string; readonly vehicle: Vehicle | null; readonly sheet: SheetSize; readonly setting: Setting }
  | { readonly ask: 'sheet'; readonly sheet: SheetSize; readonly circuit: string | null }
  | { readonly ask: 'set'; readonly setting: Setting }
  | { readonly ask: 'pick'; readonly pick: Pick | null }

export interface SheetSize { readonly width: number; readonly height: number }

/** What the worker answers. `groups` hold only what has changed since the last drawing of the same size. */
export type Answer =
  | { readonly say: 'opened'; readonly opened: OpenedPage; readonly drawn: Drawn }
  | { readonly say: 'refused'; readonly said: string; readonly sentences: readonly string[]; readonly vehicle: Vehicle; readonly choices: VehicleChoices | null }
  | { readonly say: 'laid out'; readonly width: number; readonly height: number; readonly drawn: Drawn }
  | { readonly say: 'drawn'; readonly drawn: Drawn }
  | { readonly say: 'facts'; readonly facts: Facts | null }
  | { readonly say: 'notes'; readonly notes: readonly string[] }

export interface OpenedPage {
  readonly title: string
  readonly under: string
  readonly width: number
  readonly height: number
  readonly axes: readonly PanelAxis[]
  readonly turns: boolean
  readonly vehicle: Vehicle
  readonly choices: VehicleChoices
  readonly assumed: readonly AssumedLine[]
  readonly findable: readonly Findable[]
  readonly circuits: readonly string[]
}

/** A wire or part to be found by name. */
export interface Findable { readonly pick: Pick; readonly said: string }

export interface Drawn {
  readonly groups: readonly DrawnGroup[]
  /** By axis: where it stands now, moved or not. */
  readonly positions: Readonly<Record<string, string | number>>
  readonly lit: string
  readonly notes: readonly string[]
  readonly facts: Facts | null
}
