import type { Sourced } from './sources.ts'

/** The most volts that test practice allows to be lost along a path. Limits are practice, not law. */
export interface DropLimitRow extends Sourced {
  readonly path: string
  readonly systemsV: readonly number[]
  readonly maxV: number
}

/** The volts, or the number of operations, that a component is tested at. */
export interface ComponentTest extends Sourced {
  readonly item: string
  readonly testV?: number
  readonly tolV?: number
  readonly cycles?: number
}

/** Voltage drops allowed in test practice. */
export const dropLimitRows: readonly DropLimitRow[] = [
  { path: 'starting circuit, view A', systemsV: [6], maxV: 0.2, source: 'navedtra-14050', status: 'read' },
  { path: 'starting circuit, view B', systemsV: [6], maxV: 0.3, source: 'navedtra-14050', status: 'read' },
  { path: 'starting circuit, view A', systemsV: [12], maxV: 0.4, source: 'navedtra-14050', status: 'read' },
  { path: 'starting circuit, view B', systemsV: [12], maxV: 0.3, source: 'navedtra-14050', status: 'read' },
  { path: 'starting circuit, view C', systemsV: [12], maxV: 0.1, source: 'navedtra-14050', status: 'read' },
  { path: 'each battery cable while cranking', systemsV: [6], maxV: 0.1, source: 'navedtra-14050', status: 'read' },
  { path: 'each battery cable while cranking', systemsV: [12], maxV: 0.2, source: 'navedtra-14050', status: 'read' },
  { path: 'each starter switch while cranking', systemsV: [6], maxV: 0.1, source: 'navedtra-14050', status: 'read' },
  { path: 'each starter switch while cranking', systemsV: [12], maxV: 0.1, source: 'navedtra-14050', status: 'read' },
  { path: 'each connection while cranking', systemsV: [6], maxV: 0, source: 'navedtra-14050', status: 'read', note: 'printed 0.0' },
  { path: 'each connection while cranking', systemsV: [12], maxV: 0, source: 'navedtra-14050', status: 'read', note: 'printed 0.0' },
  { path: 'cranking cable under 3 ft', systemsV: [12], maxV: 0.1, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'cranking cable 3 to 6 ft', systemsV: [12], maxV: 0.2, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'mechanical starter switch', systemsV: [12], maxV: 0.1, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'solenoid starter switch', systemsV: [12], maxV: 0.2, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'magnetic starter switch', systemsV: [12], maxV: 0.3, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'whole live cranking circuit, example total', systemsV: [12], maxV: 0.5, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'earth side, starter body to battery post, cranking', systemsV: [12], maxV: 0.2, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'starter control circuit, battery to solenoid terminal', systemsV: [12], maxV: 0.5, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'any one wire or switch of the starter control circuit', systemsV: [12], maxV: 0.1, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'rule for starter circuits, per 100 A', systemsV: [12], maxV: 0.2, source: 'tm-10-3930-671-24', status: 'read', note: 'equals 2.0 milliohm' },
  { path: 'battery positive cable incl. connections, cranking', systemsV: [12], maxV: 0.4, source: 'tm-10-3930-671-24', status: 'read' },
  { path: 'starter solenoid control, live plus earth side, 20 C', systemsV: [12], maxV: 1, source: 'tm-5-2420-230-24', status: 'read', note: 'heavy-duty starters' },
  { path: 'headlamp dip switch at design load', systemsV: [6, 12], maxV: 0.3, source: 'sae-j564', status: 'read' },
  { path: 'stop-lamp switch at design load', systemsV: [6, 12], maxV: 0.3, source: 'sae-j249', status: 'read' },
  { path: 'hazard flasher, on period, average', systemsV: [6, 12], maxV: 0.5, source: 'sae-j945', status: 'read', note: 'no single unit above 0.8 V' },
  { path: 'small-wire connection', systemsV: [12], maxV: 0, source: 'sae-drop-manual', status: 'read' },
  { path: 'high-current connection', systemsV: [12], maxV: 0.1, source: 'sae-drop-manual', status: 'read' },
  { path: 'high-current cable', systemsV: [12], maxV: 0.2, source: 'sae-drop-manual', status: 'read' },
  { path: 'switch or solenoid contact', systemsV: [12], maxV: 0.3, source: 'sae-drop-manual', status: 'read' },
  { path: 'lamp earth path (lamp body to battery earth post)', systemsV: [12], maxV: 0.1, source: 'common-practice', status: 'common practice' },
  { path: 'lamp earth path', systemsV: [6], maxV: 0.05, source: 'common-practice', status: 'common practice' },
  { path: 'headlamp, live side, battery to lamp', systemsV: [12], maxV: 0.5, source: 'common-practice', status: 'common practice' },
  { path: 'headlamp, live side, battery to lamp', systemsV: [6], maxV: 0.3, source: 'common-practice', status: 'common practice' },
  { path: 'other lamps and accessories, live side', systemsV: [12], maxV: 0.5, source: 'common-practice', status: 'common practice' },
  { path: 'other lamps and accessories, live side', systemsV: [6], maxV: 0.3, source: 'common-practice', status: 'common practice' },
  { path: 'charging circuit, generator to battery, live side, at rated current', systemsV: [12], maxV: 0.4, source: 'common-practice', status: 'common practice' },
  { path: 'charging circuit earth side', systemsV: [12], maxV: 0.2, source: 'common-practice', status: 'common practice' },
  { path: 'charging circuit, live side', systemsV: [6], maxV: 0.2, source: 'common-practice', status: 'common practice' },
  { path: 'fuse and its two clips', systemsV: [12], maxV: 0.1, source: 'common-practice', status: 'common practice' },
]

/** Test volts of switches, flashers and signalling lamps. */
export const componentTests = {
  switch6V: { item: 'switch and flasher test voltage, 6 V system', testV: 6.4, tolV: 0.2, source: 'sae-j564', status: 'read' },
  switch12V: { item: 'switch and flasher test voltage, 12 V system', testV: 12.8, tolV: 0.2, source: 'sae-j564', status: 'read' },
  stopSwitch: { item: 'stop-lamp switch endurance', cycles: 300000, source: 'sae-j249', status: 'read' },
  dipSwitch: { item: 'dip switch endurance', cycles: 50000, source: 'sae-j564', status: 'read' },
  signalLamp6V: { item: 'lamp test voltage of regulation 37, 6 V signalling lamps', testV: 6.75, source: 'directive-97-24', status: 'read' },
  signalLamp12V: { item: 'lamp test voltage of regulation 37, 12 V signalling lamps', testV: 13.5, source: 'directive-97-24', status: 'read' },
} as const satisfies Readonly<Record<string, ComponentTest>>
