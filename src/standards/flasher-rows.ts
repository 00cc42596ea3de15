import type { Sourced } from './sources.ts'

/** A figure or fact of flashers: cycles a minute, seconds to the first flash. */
export interface FlasherFigure extends Sourced {
  readonly item: string
  readonly minPerMin?: number
  readonly maxPerMin?: number
  readonly maxS?: number
}

/** Flash rates asked for, and what a dead lamp does. */
export const flasherFigures = {
  variableLoadUs: { item: 'flash rate, US, variable-load (normally open) flashers', minPerMin: 60, maxPerMin: 120, source: 'nhtsa-01931', status: 'read' },
  fixedLoadUs: { item: 'flash rate, US, fixed-load (normally closed) flashers', minPerMin: 90, maxPerMin: 120, source: 'nhtsa-01931', status: 'read' },
  measurementUs: { item: 'measurement: after 5 cycles, average of at least 3', source: 'nhtsa-01931', status: 'read' },
  germany: { item: 'flash rate, Germany: 1.5 +-0.5 Hz, same side in phase', minPerMin: 60, maxPerMin: 120, source: 'stvzo', status: 'read' },
  switzerland: { item: 'flash rate, Switzerland: 90 +-30 per minute, first light within 1 s', minPerMin: 60, maxPerMin: 120, source: 'swiss-vts', status: 'read' },
  unitedKingdom: { item: 'flash rate, UK inspection', minPerMin: 60, maxPerMin: 120, source: 'uk-inspection-manual', status: 'read' },
  regulation48: { item: 'flash rate, UN Regulation 48: 90 +-30', minPerMin: 60, maxPerMin: 120, source: 'r48-memory', status: 'from memory' },
  hazardStart: { item: 'hazard flasher start time, average (no single above 2.0 s)', maxS: 1.5, source: 'sae-j945', status: 'read' },
  hazardHotCold: { item: 'hazard flasher at -32 C and 63 C', minPerMin: 50, maxPerMin: 130, source: 'sae-j945', status: 'read' },
  failureShown: { item: 'failure of a turn lamp must show: steady on, steady off or a significant change of rate', source: 'nhtsa-91-7-29', status: 'read' },
  electronicFailure: { item: 'electronic flashers double the rate on lamp failure', source: 'nhtsa-91-7-6', status: 'read' },
  thermalFailure: { item: 'thermal (hot-wire, bimetal) fixed-load flasher with one lamp dead: much slower, or steady on', source: 'common-practice', status: 'common practice' },
  relayFailure: { item: 'relay flasher with load sensing, one lamp dead: about twice as fast', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FlasherFigure>>
