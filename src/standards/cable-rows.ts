import type { Sourced } from './sources.ts'

/** Which conductor table a cable is made to. */
export type ConductorTable = 'iso' | 'iec-class-2' | 'iec-class-5' | 'jis' | 'british' | 'sae' | 'awg' | 'aircraft'

/** Which outside-diameter column a cable has; null where none was published. */
export type Wall = 'thick' | 'thin' | 'av' | 'gpt' | 'twp' | 'gxl'

/**
 * A kind of cable: its names, its conductor table (null where the way the size is written tells the table), its wall, and
 * the conductor temperatures that its insulation bears.
 */
export interface CableRow extends Sourced {
  readonly id: string
  readonly names: readonly string[]
  readonly conductors: ConductorTable | null
  readonly wall: Wall | null
  readonly minC: number | null
  readonly maxC: number | null
}

/** A temperature class of vehicle cable. */
export interface TemperatureClassRow extends Sourced {
  readonly letter: string
  readonly minC: number
  readonly maxC: number
}

/** Kinds of cable; source and status are those of the temperature limits. */
export const cableRows: readonly CableRow[] = [
  { id: 'thick-pvc', names: ['FLY', 'thick wall PVC', 'thick wall', 'ISO 6722 thick'], conductors: 'iso', wall: 'thick', minC: -40, maxC: 105, source: 'iso6722-sheets', status: 'read' },
  { id: 'thin-pvc', names: ['FLRY', 'FLRY-A', 'FLRY-B', 'thin wall PVC', 'thin wall', 'ISO 6722', 'ISO 6722 thin'], conductors: 'iso', wall: 'thin', minC: -40, maxC: 105, source: 'iso6722-sheets', status: 'read' },
  { id: 'thin-hot-pvc', names: ['FLRYW', 'FLRYW-A', 'FLRYW-B', 'heat-resistant PVC'], conductors: 'iso', wall: 'thin', minC: -40, maxC: 125, source: 'iso6722-sheets', status: 'read' },
  { id: 'thick-xlpe', names: ['FL2X', 'FL2X-B'], conductors: 'iso', wall: 'thick', minC: -40, maxC: 125, source: 'iso6722-sheets', status: 'read' },
  { id: 'thin-xlpe', names: ['FLR2X', 'FLR2X-A', 'FLR2X-B'], conductors: 'iso', wall: 'thin', minC: -40, maxC: 125, source: 'iso6722-sheets', status: 'read' },
  { id: 'jis-av', names: ['AV', 'JIS C 3406', 'Japanese AV'], conductors: 'jis', wall: 'av', minC: null, maxC: 80, source: 'jis-av-page', status: 'read' },
  { id: 'pvc', names: ['general-purpose PVC', 'PVC cable', 'plastic'], conductors: null, wall: 'thick', minC: null, maxC: 70, source: 'iee-regs-memory', status: 'from memory', note: 'limit of general-purpose PVC' },
  { id: 'british-pvc', names: ['British PVC', 'PVC auto cable'], conductors: 'british', wall: null, minC: null, maxC: 70, source: 'iee-regs-memory', status: 'from memory', note: 'limit of general-purpose PVC' },
  { id: 'rubber-cotton', names: ['VIR', 'rubber', 'cotton', 'cotton braided', 'rubber and cotton', 'textile'], conductors: null, wall: null, minC: null, maxC: 60, source: 'iee-regs-memory', status: 'from memory', note: 'natural rubber, cotton braided; aged examples may be far worse, no published figure was found for old vehicle looms' },
  { id: 'sae-gpt', names: ['GPT', 'SAE J1128', 'SAE'], conductors: 'sae', wall: 'gpt', minC: -40, maxC: 80, source: 'sae-j1128-sheets', status: 'read' },
  { id: 'sae-twp', names: ['TWP'], conductors: 'sae', wall: 'twp', minC: -40, maxC: 85, source: 'sae-j1128-sheets', status: 'read' },
  { id: 'sae-gxl', names: ['GXL'], conductors: 'sae', wall: 'gxl', minC: -51, maxC: 125, source: 'wire-type-pages', status: 'read' },
  { id: 'sae-sxl', names: ['SXL'], conductors: 'sae', wall: null, minC: -51, maxC: 125, source: 'wire-type-pages', status: 'read' },
  { id: 'sae-txl', names: ['TXL'], conductors: 'sae', wall: null, minC: -51, maxC: 125, source: 'wire-type-pages', status: 'read' },
  { id: 'iec-flexible', names: ['IEC 60228 class 5', 'class 5', 'H05V-K', 'H07V-K'], conductors: 'iec-class-5', wall: null, minC: null, maxC: 70, source: 'iee-regs-memory', status: 'from memory', note: 'limit of general-purpose PVC' },
  { id: 'iec-stranded', names: ['IEC 60228 class 2', 'class 2', 'class 1'], conductors: 'iec-class-2', wall: null, minC: null, maxC: 70, source: 'iee-regs-memory', status: 'from memory', note: 'limit of general-purpose PVC' },
  { id: 'solid-awg', names: ['solid copper', 'solid'], conductors: 'awg', wall: null, minC: null, maxC: null, source: 'hyperphysics-wire', status: 'read', note: 'bare solid copper has no insulation limit' },
  { id: 'aircraft', names: ['aircraft wire', 'tinned aircraft copper'], conductors: 'aircraft', wall: null, minC: null, maxC: null, source: 'ac43-13-1b', status: 'read', note: 'the limit depends on the wire: 105, 150 or 200 C in the table' },
]

/** Temperature classes A to H of vehicle cable. */
export const temperatureClassRows: readonly TemperatureClassRow[] = [
  { letter: 'A', minC: -40, maxC: 85, source: 'cable-class-spec', status: 'read' },
  { letter: 'B', minC: -40, maxC: 100, source: 'cable-class-spec', status: 'read' },
  { letter: 'C', minC: -40, maxC: 125, source: 'cable-class-spec', status: 'read' },
  { letter: 'D', minC: -40, maxC: 150, source: 'cable-class-spec', status: 'read' },
  { letter: 'E', minC: -40, maxC: 175, source: 'cable-class-spec', status: 'read' },
  { letter: 'F', minC: -40, maxC: 200, source: 'cable-class-spec', status: 'read' },
  { letter: 'G', minC: -40, maxC: 225, source: 'cable-class-spec', status: 'read' },
  { letter: 'H', minC: -40, maxC: 250, source: 'cable-class-spec', status: 'read' },
]
