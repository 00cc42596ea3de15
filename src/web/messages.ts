import type { AddressWords } from './address.ts'
import type { DrawnGroup } from '../draw/index.ts'
import type { Vehicle } from '../record/index.ts'
import type { AssumedLine, Facts, PanelAxis, Pick, Setting, VehicleChoices } from '../tasks/index.ts'

/** What the page asks of its worker. */
export type Ask =
  | { readonly ask: 'open'; readonly text: string; readonly from: From; readonly view: View }
  | { readonly ask: 'sheet'; readonly view: View }
  | { readonly ask: 'set'; readonly setting: Setting }
  | { readonly ask: 'pick'; readonly pick: Pick | null }

/** Which vehicle in which setting: as chosen, null for the first, or as the address says. */
export type From =
  | { readonly kind: 'chosen'; readonly vehicle: Vehicle | null; readonly setting: Setting }
  | { readonly kind: 'address'; readonly words: AddressWords }

/** What is drawn and for how large a sheet: all or one circuit, to be read or to be seen as a whole. */
export interface View { readonly sheet: SheetSize; readonly circuit: string | null; readonly whole: boolean }

export interface SheetSize { readonly width: number; readonly height: number }

/** What the worker answers. `groups` hold only what has changed since the last drawing of the same size. */
export type Answer =
  | { readonly say: 'opened'; readonly opened: OpenedPage; readonly drawn: Drawn }
  | { readonly say: 'refused'; readonly said: string; readonly sentences: readonly string[]; readonly vehicle: Vehicle; readonly choices: VehicleChoices | null }
  | { readonly say: 'laid out'; readonly size: DrawingSize; readonly drawn: Drawn }
  | { readonly say: 'drawn'; readonly drawn: Drawn }
  | { readonly say: 'facts'; readonly facts: Facts | null }
  | { readonly say: 'notes'; readonly notes: readonly string[] }

/** The drawing in its own unit, and the size of its lettering in it. */
export interface DrawingSize { readonly width: number; readonly height: number; readonly letter: number; readonly whole: boolean }

export interface OpenedPage {
  readonly title: string
  readonly under: string
  readonly size: DrawingSize
  /** The setting that it was opened in. */
  readonly setting: Setting
  /** Entries of the address that this vehicle does not know, each in a sentence. */
  readonly ignored: readonly string[]
  /** The vehicle that is shown when nothing is chosen. */
  readonly first: Vehicle
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
