import type { AddressWords, Stand } from './address.ts'
import type { DrawnGroup } from '../draw/index.ts'
import type { Vehicle } from '../record/index.ts'
import type { AssumedLine, Check, Facts, Findable, LiveCard, PanelAxis, Picked, Setting, SettingNotes, VehicleChoices } from '../tasks/index.ts'

/** What the page asks of its worker, which answers in the order of asking: a record, a vehicle of it, or a movement. */
export type Ask =
  | { readonly ask: 'open'; readonly text: string; readonly words: AddressWords; readonly sheet: SheetSize }
  | { readonly ask: 'choose'; readonly vehicle: Vehicle; readonly stand: Stand; readonly sheet: SheetSize }
  | { readonly ask: 'go'; readonly words: AddressWords; readonly sheet: SheetSize }
  | { readonly ask: 'view'; readonly view: View }
  | { readonly ask: 'sheet'; readonly sheet: SheetSize }
  | { readonly ask: 'set'; readonly setting: Setting }
  | { readonly ask: 'pick'; readonly pick: Picked | null; readonly card: boolean }
  | { readonly ask: 'find'; readonly words: string }

/** What is drawn: all or one circuit, to be read or to be seen as a whole. */
export type View = Pick<Stand, 'circuit' | 'whole'>

/** The sheet that a drawing is to fill, px. */
export interface SheetSize { readonly width: number; readonly height: number }

/** What the worker answers. `groups` hold only what has changed since the last drawing of the same size. */
export type Answer =
  | { readonly say: 'opened'; readonly opened: OpenedPage; readonly went: Went; readonly drawn: Drawn }
  | { readonly say: 'refused'; readonly refused: Refused }
  | { readonly say: 'laid out'; readonly size: DrawingSize; readonly axes: readonly PanelAxis[]; readonly drawn: Drawn }
  | { readonly say: 'drawn'; readonly drawn: Drawn }
  | { readonly say: 'facts'; readonly facts: Facts | null; readonly card: LiveCard | null }
  | { readonly say: 'found'; readonly found: readonly Findable[] }
  | { readonly say: 'notes'; readonly notes: Drawn['notes'] }
  | { readonly say: 'nothing' }
  /** The program itself is at fault: what could not be done stays as it was. */
  | { readonly say: 'failed'; readonly said: string }

/** Where an address has led: what is now set and looked at, and a sentence for each entry that this vehicle does not know. */
export interface Went { readonly stand: Stand; readonly ignored: readonly string[] }

/** The drawing in its own unit, and the size of its lettering in it. */
export interface DrawingSize { readonly width: number; readonly height: number; readonly letter: number; readonly whole: boolean }

/** What is known of a record's vehicles, whether the one asked for opens or not. */
export interface Vehicles {
  readonly vehicle: Vehicle
  /** The vehicle that is shown when nothing is chosen. */
  readonly first: Vehicle
  /** Null where the record itself cannot be read. */
  readonly choices: VehicleChoices | null
}

export interface Refused extends Vehicles { readonly title: string; readonly said: string; readonly sentences: readonly string[] }

export interface OpenedPage extends Vehicles {
  readonly title: string
  readonly under: string
  readonly size: DrawingSize
  readonly axes: readonly PanelAxis[]
  readonly turns: boolean
  readonly assumed: readonly AssumedLine[]
  readonly circuits: readonly string[]
  readonly checks: readonly Check[]
}

export interface Drawn {
  readonly groups: readonly DrawnGroup[]
  /** By axis: where it stands now, moved or not. */
  readonly positions: Readonly<Record<string, string | number>>
  readonly lit: string
  readonly notes: SettingNotes
  readonly facts: Facts | null
  /** Of the picked part, where it is asked for. */
  readonly card: LiveCard | null
}
