import type { Sourced } from './sources.ts'

/** What the law of a country asks of the lamps of an old vehicle. */
export interface LampLaw extends Sourced {
  readonly rule: string
  readonly where: 'Germany' | 'UK'
}

/** Rules for lamps by country. */
export const lampLaw = {
  tailLampsNotOnOneFuse: { rule: 'the two required tail lamps must not share one fuse', where: 'Germany', source: 'stvzo', status: 'read' },
  stopBrighterThanTail: { rule: 'stop lamps next to or combined with tail lamps must be brighter than them', where: 'Germany', source: 'stvzo', status: 'read' },
  indicatorsShown: { rule: 'driver must be shown that the indicators work if they are out of view', where: 'Germany', source: 'stvzo', status: 'read' },
  oneStopLamp: { rule: 'one stop lamp suffices on a vehicle first used before 1 Jan 1971', where: 'UK', source: 'uk-lighting-1989', status: 'read' },
  noIndicators: { rule: 'indicators not required if first used before 1 Jan 1936 or without any position lamps', where: 'UK', source: 'uk-inspection-manual', status: 'read' },
  whiteAndRedIndicators: { rule: 'front indicators may be white and rear red if first used before 1 Sept 1965', where: 'UK', source: 'uk-inspection-manual', status: 'read' },
  semaphores: { rule: 'pre-1965 vehicles: semaphore arms or white/red flashers allowed; amber stop lamps no longer allowed from 1 Jan 1971', where: 'UK', source: 'trade-weekly-1970', status: 'read' },
} as const satisfies Readonly<Record<string, LampLaw>>
