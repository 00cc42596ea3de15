import type { Sourced } from './sources.ts'

/** Least radius inside a bend, as a multiple of the outside diameter. */
export interface BendRadiusRow extends Sourced {
  readonly what: string
  readonly multiple: number
}

/** The most, and where given the least, millimetres between clips or ties. */
export interface SupportRow extends Sourced {
  readonly what: string
  readonly minMm?: number
  readonly maxMm: number
}

/** The least distance from a part. */
export interface ClearanceRow extends Sourced {
  readonly part: string
  readonly minMm: number
}

/** The largest share of a tube's inside area that wires may fill. */
export interface FillRow extends Sourced {
  readonly wires: string
  readonly maxPct: number
}

/** Inside diameter over wire diameter between which three like wires may jam; or how to count it in a bend. */
export interface JamRow extends Sourced {
  readonly rule: string
  readonly minRatio: number | null
  readonly maxRatio: number | null
}

/** A bundle of mixed wires counts by its own diameter, at a break-out by that of the branch. */
export const bendRadiusRows: readonly BendRadiusRow[] = [
  { what: 'wire or cable, open wiring', multiple: 10, source: 'tm-1-1500-204-23', status: 'read' },
  { what: 'wire bundle: times the bundle diameter', multiple: 10, source: 'home-built-article', status: 'read' },
  { what: 'wire at a terminal strip or break-out, where supported', multiple: 3, source: 'ac43-13-1b-ch11-memory', status: 'from memory', note: 'par. 11-126; the page read was cut off at this exception' },
  { what: 'unshielded single or multi-conductor cable', multiple: 8, source: 'inspectors-forum', status: 'read' },
  { what: 'general cable pulling rule, racking and installing', multiple: 12, source: 'cable-maker-rules', status: 'read' },
  { what: 'battery cable, fine-strand flexible, fixed', multiple: 5, source: 'common-practice', status: 'common practice' },
  { what: 'battery cable, coarse-strand or stiff, fixed', multiple: 8, source: 'common-practice', status: 'common practice' },
  { what: 'flexible cable moved in service (door hinge, engine rock)', multiple: 10, source: 'common-practice', status: 'common practice' },
]

/** Clips and ties. Tape, ties or cord are not primary support (AC 43.13-1B par. 11-96 o). */
export const supportRows: readonly SupportRow[] = [
  { what: 'aircraft open wiring, clamps', maxMm: 610, source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-96 a, and US Army TM 1-1500-204-23-4' },
  { what: 'small passenger vessel, metal supports', maxMm: 610, source: 'cfr46-183-340', status: 'read' },
  { what: 'boat wiring', maxMm: 457, source: 'boat-standard-summary', status: 'read' },
  { what: 'battery cable, first support from the battery', maxMm: 914, source: 'boat-exam-page', status: 'read' },
  { what: 'vehicle wiring, body-builder additions', maxMm: 300, source: 'body-builder-manual-2015', status: 'read' },
  { what: 'wires behind a connector, first fixing', maxMm: 120, source: 'harness-maker-page', status: 'read' },
  { what: 'ties between supports that are more than 305 mm apart', maxMm: 305, source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-158 b, and US Army TM 1-1520-240-BD' },
  { what: 'ties on a service-loop harness', minMm: 102, maxMm: 152, source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-136' },
  { what: 'ties on a sleeve over a service loop', minMm: 152, maxMm: 203, source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-137' },
  { what: 'label from the service loop', maxMm: 76, source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-137' },
  { what: 'old-vehicle loom on body and chassis, P-clips', minMm: 150, maxMm: 250, source: 'common-practice', status: 'common practice' },
]

/** Never along brake, fuel or grease pipes (a body-builder manual); never fastened to a fuel line (US Army TM 1-1500-204-23-4). */
export const clearanceRows: readonly ClearanceRow[] = [
  { part: 'exhaust pipe, silencer, without heat shield', minMm: 200, source: 'body-builder-manual-2015', status: 'read' },
  { part: 'heat shield of a part at or above 200 C', minMm: 50, source: 'harness-maker-page', status: 'read' },
  { part: 'fan, pulley, propeller shaft', minMm: 50, source: 'harness-maker-page', status: 'read' },
  { part: 'bracket edge, bolt head, frame', minMm: 10, source: 'harness-maker-page', status: 'read' },
  { part: 'battery or other chemical container', minMm: 50, source: 'body-builder-manual-2015', status: 'read' },
  { part: 'fuel, oil, flammable-fluid line: preferred, wire above the line', minMm: 152, source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-96' },
  { part: 'fuel line where the above cannot be had, closely clamped, not parallel', minMm: 51, source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-96' },
  { part: 'moving control cables and rods', minMm: 76, source: 'ac43-13-1b-ch11-memory', status: 'from memory', note: 'or a mechanical guard' },
  { part: 'hole edge without grommet', minMm: 9.5, source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-115' },
  { part: 'metal fuel part above the battery top: shield if nearer', minMm: 305, source: 'cfr33-183-420', status: 'read' },
]

/** Fill of a tube, NEC chapter 9 Table 1. */
export const fillRows: readonly FillRow[] = [
  { wires: '1', maxPct: 53, source: 'nec-ch9-table1', status: 'read' },
  { wires: '2', maxPct: 31, source: 'nec-ch9-table1', status: 'read' },
  { wires: '3 or more', maxPct: 40, source: 'nec-ch9-table1', status: 'read' },
  { wires: '3 or more, tube not longer than 610 mm (24 in)', maxPct: 60, source: 'conduit-fill-page', status: 'read' },
  { wires: 'soft sleeve put over a finished loom', maxPct: 80, source: 'common-practice', status: 'common practice' },
]

/** Jamming in a tube. */
export const jamRows: readonly JamRow[] = [
  { rule: 'jamming can occur with three equal cables between these ratios; with four or more very unlikely', minRatio: 2.8, maxRatio: 3.2, source: 'nec-ch9-table1', status: 'read' },
  { rule: 'in bends use 1.05 x inside diameter for the ratio', minRatio: null, maxRatio: null, source: 'cable-guide-memory', status: 'from memory' },
]
