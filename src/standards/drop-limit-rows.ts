import type { Sourced } from './sources.ts'

/** What a limit is for. Limits of one class are for the same stretch of a circuit and may differ between sources. */
export type DropCircuit =
  | 'starting circuit' | 'battery cable' | 'starter switch' | 'cranking joint' | 'short cranking cable'
  | 'solenoid starter switch' | 'magnetic starter switch' | 'starter main lead' | 'starter earth' | 'starter control'
  | 'starter control step' | 'starter cable per 100 A' | 'switch' | 'flasher' | 'joint' | 'lamp earth' | 'headlamp'
  | 'lamp or accessory' | 'charging lead' | 'charging earth' | 'fuse' | 'small lamp' | 'headlamp from its switch'
  | 'charging control' | 'starter control, two windings' | 'control lead' | 'charging and starting cables'
  | 'other cables' | 'connection point' | 'aircraft equipment' | 'aircraft equipment, intermittent'

/** The most volts that practice allows to be lost along a path, by the nominal volts of the system. Limits are practice, not law. */
export interface DropLimitRow extends Sourced {
  readonly path: string
  readonly circuit: DropCircuit
  readonly systemsV: readonly number[]
  readonly maxV: number
}

/** The largest share of the system volts, in per cent, that may be lost on the way to this use. */
export interface DropShareRow extends Sourced {
  readonly use: string
  readonly maxPct: number
}

/** The volts, or the number of operations, that a component is tested at. */
export interface ComponentTest extends Sourced {
  readonly item: string
  readonly testV?: number
  readonly tolV?: number
  readonly cycles?: number
}

/** Voltage drops allowed in test practice and in design. Views A to C of the starting circuit are figures nobody saw. */
export const dropLimitRows: readonly DropLimitRow[] = [
  { path: 'starting circuit, view A', circuit: 'starting circuit', systemsV: [6], maxV: 0.2, source: 'navedtra-14050', status: 'read' },
  { path: 'starting circuit, view B', circuit: 'starting circuit', systemsV: [6], maxV: 0.3, source: 'navedtra-14050', status: 'read' },
  { path: 'starting circuit, view A', circuit: 'starting circuit', systemsV: [12], maxV: 0.4, source: 'navedtra-14050', status: 'read' },
  { path: 'starting circuit, view B', circuit: 'starting circuit', systemsV: [12], maxV: 0.3, source: 'navedtra-14050', status: 'read' },
  { path: 'starting circuit, view C', circuit: 'starting circuit', systemsV: [12], maxV: 0.1, source: 'navedtra-14050', status: 'read' },
  { path: 'each battery cable while cranking', circuit: 'battery cable', systemsV: [6], maxV: 0.1, source: 'navedtra-14050', status: 'read' },
  { path: 'each battery cable while cranking', circuit: 'battery cable', systemsV: [12], maxV: 0.2, source: 'navedtra-14050', status: 'read' },
  { path: 'each starter switch while cranking', circuit: 'starter switch', systemsV: [6], maxV: 0.1, source: 'navedtra-14050', status: 'read' },
  { path: 'each starter switch while cranking', circuit: 'starter switch', systemsV: [12], maxV: 0.1, source: 'navedtra-14050', status: 'read' },
  { path: 'each connection while cranking', circuit: 'cranking joint', systemsV: [6], maxV: 0, source: 'navedtra-14050', status: 'read', note: 'printed 0.0' },
  { path: 'each connection while cranking', circuit: 'cranking joint', systemsV: [12], maxV: 0, source: 'navedtra-14050', status: 'read', note: 'printed 0.0' },
  { path: 'cranking cable under 3 ft', circuit: 'short cranking cable', systemsV: [12], maxV: 0.1, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'cranking cable 3 to 6 ft', circuit: 'battery cable', systemsV: [12], maxV: 0.2, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'mechanical starter switch', circuit: 'starter switch', systemsV: [12], maxV: 0.1, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'solenoid starter switch', circuit: 'solenoid starter switch', systemsV: [12], maxV: 0.2, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'magnetic starter switch', circuit: 'magnetic starter switch', systemsV: [12], maxV: 0.3, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'whole live cranking circuit, example total', circuit: 'starter main lead', systemsV: [12], maxV: 0.5, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'earth side, starter body to battery post, cranking', circuit: 'starter earth', systemsV: [12], maxV: 0.2, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'starter control circuit, battery to solenoid terminal', circuit: 'starter control', systemsV: [12], maxV: 0.5, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'any one wire or switch of the starter control circuit', circuit: 'starter control step', systemsV: [12], maxV: 0.1, source: 'tm-5-3820-256-24', status: 'read' },
  { path: 'rule for starter circuits, per 100 A', circuit: 'starter cable per 100 A', systemsV: [12], maxV: 0.2, source: 'tm-10-3930-671-24', status: 'read', note: 'equals 2.0 milliohm' },
  { path: 'battery positive cable incl. connections, cranking', circuit: 'starter main lead', systemsV: [12], maxV: 0.4, source: 'tm-10-3930-671-24', status: 'read' },
  { path: 'starter solenoid control, live plus earth side, 20 C', circuit: 'starter control', systemsV: [12], maxV: 1, source: 'tm-5-2420-230-24', status: 'read', note: 'heavy-duty starters' },
  { path: 'headlamp dip switch at design load', circuit: 'switch', systemsV: [6, 12], maxV: 0.3, source: 'sae-j564', status: 'read' },
  { path: 'stop-lamp switch at design load', circuit: 'switch', systemsV: [6, 12], maxV: 0.3, source: 'sae-j249', status: 'read' },
  { path: 'hazard flasher, on period, average', circuit: 'flasher', systemsV: [6, 12], maxV: 0.5, source: 'sae-j945', status: 'read', note: 'no single unit above 0.8 V' },
  { path: 'small-wire connection', circuit: 'joint', systemsV: [12], maxV: 0, source: 'sae-drop-manual', status: 'read' },
  { path: 'high-current connection', circuit: 'cranking joint', systemsV: [12], maxV: 0.1, source: 'sae-drop-manual', status: 'read' },
  { path: 'high-current cable', circuit: 'battery cable', systemsV: [12], maxV: 0.2, source: 'sae-drop-manual', status: 'read' },
  { path: 'switch or solenoid contact', circuit: 'switch', systemsV: [12], maxV: 0.3, source: 'sae-drop-manual', status: 'read' },
  { path: 'lamp earth path (lamp body to battery earth post)', circuit: 'lamp earth', systemsV: [12], maxV: 0.1, source: 'common-practice', status: 'common practice' },
  { path: 'lamp earth path', circuit: 'lamp earth', systemsV: [6], maxV: 0.05, source: 'common-practice', status: 'common practice' },
  { path: 'headlamp, live side, battery to lamp', circuit: 'headlamp', systemsV: [12], maxV: 0.5, source: 'common-practice', status: 'common practice' },
  { path: 'headlamp, live side, battery to lamp', circuit: 'headlamp', systemsV: [6], maxV: 0.3, source: 'common-practice', status: 'common practice' },
  { path: 'other lamps and accessories, live side', circuit: 'lamp or accessory', systemsV: [12], maxV: 0.5, source: 'common-practice', status: 'common practice' },
  { path: 'other lamps and accessories, live side', circuit: 'lamp or accessory', systemsV: [6], maxV: 0.3, source: 'common-practice', status: 'common practice' },
  { path: 'charging circuit, generator to battery, live side, at rated current', circuit: 'charging lead', systemsV: [12], maxV: 0.4, source: 'common-practice', status: 'common practice' },
  { path: 'charging circuit earth side', circuit: 'charging earth', systemsV: [12], maxV: 0.2, source: 'common-practice', status: 'common practice' },
  { path: 'charging circuit, live side', circuit: 'charging lead', systemsV: [6], maxV: 0.2, source: 'common-practice', status: 'common practice' },
  { path: 'fuse and its two clips', circuit: 'fuse', systemsV: [12], maxV: 0.1, source: 'common-practice', status: 'common practice' },
  { path: 'light switch terminal 30 to lamps, lamp power below 15 W', circuit: 'small lamp', systemsV: [12, 24], maxV: 0.1, source: 'journal-2017', status: 'read', note: 'printed once, without naming a voltage' },
  { path: 'light switch terminal 30 to lamps, lamp power above 15 W', circuit: 'lamp or accessory', systemsV: [12, 24], maxV: 0.5, source: 'journal-2017', status: 'read', note: 'printed once, without naming a voltage' },
  { path: 'light switch terminal 30 to headlamps', circuit: 'headlamp from its switch', systemsV: [12, 24], maxV: 0.3, source: 'journal-2017', status: 'read', note: 'printed once, without naming a voltage' },
  { path: 'charging lead, alternator B+ to battery', circuit: 'charging lead', systemsV: [12], maxV: 0.4, source: 'journal-2017', status: 'read' },
  { path: 'charging lead, alternator B+ to battery', circuit: 'charging lead', systemsV: [24], maxV: 0.8, source: 'journal-2017', status: 'read' },
  { path: 'control lead, alternator to regulator (D+, D-, DF)', circuit: 'charging control', systemsV: [12], maxV: 0.1, source: 'journal-2017', status: 'read' },
  { path: 'control lead, alternator to regulator (D+, D-, DF)', circuit: 'charging control', systemsV: [24], maxV: 0.2, source: 'journal-2017', status: 'read' },
  { path: 'starter main lead', circuit: 'starter main lead', systemsV: [12], maxV: 0.5, source: 'journal-2017', status: 'read' },
  { path: 'starter main lead', circuit: 'starter main lead', systemsV: [24], maxV: 1, source: 'journal-2017', status: 'read' },
  { path: 'starter control lead to terminal 50, solenoid with single winding', circuit: 'starter control', systemsV: [12], maxV: 1.4, source: 'journal-2017', status: 'read' },
  { path: 'starter control lead to terminal 50, solenoid with single winding', circuit: 'starter control', systemsV: [24], maxV: 2, source: 'journal-2017', status: 'read' },
  { path: 'starter control lead to terminal 50, solenoid with pull-in and hold-in winding', circuit: 'starter control, two windings', systemsV: [12], maxV: 2.4, source: 'journal-2017', status: 'read' },
  { path: 'starter control lead to terminal 50, solenoid with pull-in and hold-in winding', circuit: 'starter control, two windings', systemsV: [24], maxV: 2.8, source: 'journal-2017', status: 'read' },
  { path: 'other control leads, switch to relay, horn etc.', circuit: 'control lead', systemsV: [12], maxV: 0.5, source: 'journal-2017', status: 'read' },
  { path: 'other control leads, switch to relay, horn etc.', circuit: 'control lead', systemsV: [24], maxV: 1, source: 'journal-2017', status: 'read' },
  { path: 'alternator, starter, battery', circuit: 'charging and starting cables', systemsV: [24], maxV: 0.6, source: 'truck-engine-manual-2018', status: 'read', note: '2.5 % of 24 V' },
  { path: 'other cables', circuit: 'other cables', systemsV: [24], maxV: 1.2, source: 'truck-engine-manual-2018', status: 'read', note: '5 % of 24 V' },
  { path: 'allowance per connection point', circuit: 'connection point', systemsV: [24], maxV: 0.1, source: 'truck-engine-manual-2018', status: 'read' },
  { path: 'allowance per joint', circuit: 'joint', systemsV: [24], maxV: 0.3, source: 'truck-engine-manual-2018', status: 'read' },
  { path: 'bus to equipment, continuous load', circuit: 'aircraft equipment', systemsV: [14], maxV: 0.5, source: 'ac43-13-1b', status: 'read' },
  { path: 'bus to equipment, intermittent load', circuit: 'aircraft equipment, intermittent', systemsV: [14], maxV: 1, source: 'ac43-13-1b-11-6-memory', status: 'from memory' },
  { path: 'bus to equipment, continuous load', circuit: 'aircraft equipment', systemsV: [28], maxV: 1, source: 'ac43-13-1b', status: 'read' },
  { path: 'bus to equipment, intermittent load', circuit: 'aircraft equipment, intermittent', systemsV: [28], maxV: 2, source: 'ac43-13-1b-11-6-memory', status: 'from memory' },
  { path: 'bus to equipment, continuous load', circuit: 'aircraft equipment', systemsV: [115], maxV: 4, source: 'ac43-13-1b', status: 'read' },
  { path: 'bus to equipment, intermittent load', circuit: 'aircraft equipment, intermittent', systemsV: [115], maxV: 8, source: 'ac43-13-1b-11-6-memory', status: 'from memory' },
  { path: 'bus to equipment, continuous load', circuit: 'aircraft equipment', systemsV: [200], maxV: 7, source: 'ac43-13-1b', status: 'read' },
  { path: 'bus to equipment, intermittent load', circuit: 'aircraft equipment, intermittent', systemsV: [200], maxV: 14, source: 'ac43-13-1b-11-6-memory', status: 'from memory' },
]

/** Drops allowed as a share of the system volts, boats and aircraft. */
export const dropShareRows: readonly DropShareRow[] = [
  { use: 'panel feeds, navigation lights, bilge blowers, electronics (critical)', maxPct: 3, source: 'abyc-drop-pages', status: 'read' },
  { use: 'general lighting and non-critical', maxPct: 10, source: 'abyc-drop-pages', status: 'read' },
  { use: 'navigation lights', maxPct: 5, source: 'chandler-drop-page', status: 'read' },
  { use: 'other consumers', maxPct: 7, source: 'chandler-drop-page', status: 'read' },
  { use: 'aircraft, generator or battery to bus, at rated current or the 5-minute battery rate', maxPct: 2, source: 'faa-handbook-copy', status: 'read', note: 'share of the regulated volts; the same page calls 0.005 ohm of earth path satisfactory' },
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
