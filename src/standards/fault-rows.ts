import type { Sourced } from './sources.ts'

/** Least and most of a figure; the same twice where one value is given. Infinity ohm is open. */
export type FaultSpan = readonly [number, number]

/** What a fault is electrically, with the figures that go with its kind. */
export interface FaultModel {
  readonly kind: string
  readonly ohm?: FaultSpan
  readonly restDropV?: FaultSpan
  readonly internalFactor?: FaultSpan
  readonly ohmFactor?: FaultSpan
  readonly outputFactor?: FaultSpan
  readonly amps?: FaultSpan
  readonly ratio?: FaultSpan
  readonly inrushFactor?: FaultSpan
  readonly effect?: string
}

/**
 * A fault of an old vehicle: what is seen, why, what it is electrically, and the test that tells it from others. Source and
 * status are of the mechanism; `weight` (relative) and `sharePct` (of all weights, per cent) are judgement in every row.
 */
export interface FaultRow extends Sourced {
  readonly id: string
  readonly name: string
  readonly symptom: string
  readonly cause: string
  readonly model: FaultModel
  readonly test: string
  readonly weight: number
  readonly sharePct: number
  readonly intermittent: boolean
  readonly place?: string
}

/** A figure for ranking causes. Judgement. */
export interface FaultPrior extends Sourced {
  readonly item: string
  readonly value: number
}

/** What fails, how often beside the others, and how it is told. */
export const faultRows: readonly FaultRow[] = [
  { id: 'conn-resistance', name: 'corroded or loose terminal, live side', symptom: 'load dim, slow or dead; other loads on the same fuse normal', cause: 'oxide, loose screw, weak crimp, fuse-clip corrosion', model: { kind: 'series resistance', ohm: [0.05, 5] }, test: 'voltage drop across the joint under load above limit; resistance test without load may look fine', weight: 14, sharePct: 7.8, intermittent: true, place: 'fuse clips, bullet connectors, lamp holders', source: 'trouble-shooting-page', status: 'read', note: 'the source names poor connections as the most common failure' },
  { id: 'earth-resistance', name: 'bad earth of one lamp or unit', symptom: 'dim lamp; improves when a jumper joins body to battery earth post', cause: 'rust or paint under the earth screw', model: { kind: 'series resistance in earth path', ohm: [0.1, 10] }, test: 'voltage between unit body and battery earth post while switched on', weight: 13, sharePct: 7.2, intermittent: true, place: 'rear lamps, wings, gauges', source: 'lamp-trade-blog-2016', status: 'read' },
  { id: 'earth-open-backfeed', name: 'open shared earth of a lamp cluster', symptom: 'two functions work weakly together: tail lamp glows with indicator, brake light dims when side lamps on, indicator pulses other lamps', cause: 'earth of a combined lamp lost; current returns through another filament and its feed', model: { kind: 'open earth node', effect: 'filaments of the cluster in series through other lamps to earth' }, test: 'cluster body shows several volts to battery earth; other function switched on restores or changes brightness', weight: 8, sharePct: 4.4, intermittent: false, source: 'lamp-trade-blog-2016', status: 'read', note: 'source describes current finding another path past other lamps' },
  { id: 'engine-earth', name: 'missing or poor engine earth strap', symptom: 'slow cranking, hot choke or throttle cables, dim lamps while cranking', cause: 'strap left off or corroded', model: { kind: 'series resistance in starter return', ohm: [0.005, 0.2] }, test: 'engine block to battery earth post above 0.2 V while cranking', weight: 5, sharePct: 2.8, intermittent: false, source: 'tm-5-3820-256-24', status: 'read' },
  { id: 'battery-terminal', name: 'dirty battery post or clamp', symptom: 'lamps bright, clicks or dead when cranking; dash lamps go out', cause: 'oxide between post and clamp', model: { kind: 'series resistance', ohm: [0.01, 0.2] }, test: 'volts from post to clamp while cranking; ideal 0', weight: 7, sharePct: 3.9, intermittent: true, source: 'openstax-starter', status: 'read', note: '0.09 ohm cuts a 200 A starter to 80 A in the textbook example' },
  { id: 'battery-weak', name: 'discharged or worn battery', symptom: 'slow cranking, all lamps dim without engine', cause: 'state of charge, sulphation, age', model: { kind: 'source', restDropV: [0.2, 1], internalFactor: [1.5, 5] }, test: 'rest voltage and load test', weight: 8, sharePct: 4.4, intermittent: false, source: 'technician-study-guide', status: 'read' },
  { id: 'battery-cell', name: 'one dead cell', symptom: 'rest voltage about 2 V low, boils when charged', cause: 'internal short', model: { kind: 'source', restDropV: [2.1, 2.1] }, test: 'cell specific gravities differ by more than 0.025', weight: 2, sharePct: 1.1, intermittent: false, source: 'tm-9-6140-200-14', status: 'read' },
  { id: 'open-wire', name: 'broken wire or pulled terminal', symptom: 'one function dead, fuse intact', cause: 'break at a hinge, crimp, bulkhead', model: { kind: 'open' }, test: 'supply present before, absent after the break; no voltage drop along a dead branch is misleading', weight: 6, sharePct: 3.3, intermittent: true, source: 'common-practice', status: 'common practice' },
  { id: 'blown-fuse', name: 'blown fuse', symptom: 'all loads of one fuse dead', cause: 'overload or short, or age fatigue', model: { kind: 'open at fuse' }, test: 'voltage on one clip only', weight: 5, sharePct: 2.8, intermittent: false, source: 'garage-column', status: 'read' },
  { id: 'fuse-holder', name: 'corroded fuse clip', symptom: 'as blown fuse or dim; fuse clip hot', cause: 'oxide', model: { kind: 'series resistance', ohm: [0.02, 1] }, test: 'volts across fuse including clips', weight: 6, sharePct: 3.3, intermittent: true, source: 'garage-column', status: 'read' },
  { id: 'wrong-fuse', name: 'fuse too large', symptom: 'no symptom until a cable overheats', cause: 'replaced by a stronger one or by foil', model: { kind: 'protection mismatch' }, test: 'fuse rating above cable rating', weight: 3, sharePct: 1.7, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'wrong-fuse-small', name: 'fuse too small', symptom: 'fuse blows at switch-on of cold lamps or motors', cause: 'rating not matched to inrush', model: { kind: 'protection mismatch', inrushFactor: [10, 15] }, test: 'steady current below rating but fuse opens', weight: 1.5, sharePct: 0.8, intermittent: false, source: 'lamp-technology-site', status: 'read' },
  { id: 'chafe-short', name: 'live wire chafed to body', symptom: 'fuse blows at once or with movement; unfused: smoke', cause: 'edge, clamp, missing grommet', model: { kind: 'short to earth', ohm: [0, 0.2] }, test: 'resistance to earth with loads unplugged; fuse blows only with certain switch on', weight: 4, sharePct: 2.2, intermittent: true, source: 'common-practice', status: 'common practice' },
  { id: 'chafe-leak', name: 'damp or carbonised leak to earth', symptom: 'battery drains, fuse intact', cause: 'wet connector, cracked insulation', model: { kind: 'leak to earth', ohm: [5, 500] }, test: 'key-off current above limit; pull fuses one by one', weight: 2.5, sharePct: 1.4, intermittent: false, source: 'battery-service-module', status: 'read' },
  { id: 'chafe-after-load', name: 'switched-earth wire chafed to body', symptom: 'load permanently on', cause: 'wire to a door, horn or pressure switch touches body', model: { kind: 'short to earth after the load' }, test: 'load stays on with switch unplugged', weight: 2, sharePct: 1.1, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'wire-wire-short', name: 'two wires short together', symptom: 'two functions come on together from either switch', cause: 'melted loom, pinched loom', model: { kind: 'bridge', ohm: [0, 0.5] }, test: 'feed one with the other unplugged; both live', weight: 2, sharePct: 1.1, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'swapped-wires', name: 'two wires exchanged', symptom: 'wrong lamp lights; left and right or main and dip exchanged', cause: 'previous repair', model: { kind: 'topology error', effect: 'permutation of two ends' }, test: 'function map is a swap; drops normal', weight: 4, sharePct: 2.2, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'wrong-terminal', name: 'wire on wrong terminal of switch or relay', symptom: 'load always on, never on, or on in wrong position', cause: '30 and 87, or 49 and 49a, exchanged', model: { kind: 'topology error' }, test: 'compare terminal by terminal; feed reaches the unit', weight: 4, sharePct: 2.2, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'missing-wire', name: 'wire never fitted', symptom: 'one function dead after rewiring', cause: 'omission', model: { kind: 'topology error', effect: 'edge missing' }, test: 'no conductor between the two ends', weight: 2, sharePct: 1.1, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'lamp-open', name: 'blown lamp', symptom: 'one lamp dead, holder has voltage and earth', cause: 'filament broken', model: { kind: 'open load' }, test: 'full voltage across the holder contacts with lamp in place', weight: 9, sharePct: 5, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'lamp-holder', name: 'corroded lamp holder', symptom: 'lamp dead or flickers, works when moved', cause: 'oxide, weak spring', model: { kind: 'series resistance', ohm: [0.1, 20] }, test: 'volts across holder contacts lower than supply; cleaning restores', weight: 7, sharePct: 3.9, intermittent: true, source: 'lamp-trade-blog-2016', status: 'read' },
  { id: 'wrong-voltage-lamp', name: '6 V lamp in 12 V system or the reverse', symptom: 'very bright and short-lived, or very dim', cause: 'wrong spare', model: { kind: 'load value', ratio: [2, 2] }, test: 'lamp marking; measured current twice or half', weight: 2, sharePct: 1.1, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'wrong-watt-lamp', name: 'wrong wattage lamp', symptom: 'flasher rate wrong; dim or glaring lamp', cause: '5 W in place of 21 W', model: { kind: 'load value', ratio: [0.2, 4.5] }, test: 'current not that of the category', weight: 3, sharePct: 1.7, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'flasher-one-dead', name: 'one turn lamp dead', symptom: 'rate changes: thermal type slow or steady, sensing type about double', cause: 'lamp, holder or earth', model: { kind: 'reduced load on flasher' }, test: 'other side flashes normally', weight: 6, sharePct: 3.3, intermittent: false, source: 'nhtsa-91-7-29', status: 'read' },
  { id: 'flasher-dead', name: 'flasher unit failed', symptom: 'no flash either side, or steady light', cause: 'burnt contact or broken hot wire', model: { kind: 'open or welded contact' }, test: '49 live, 49a dead or always live', weight: 3, sharePct: 1.7, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'switch-open', name: 'burnt switch contact', symptom: 'function dead or heats the switch', cause: 'wear, arcing', model: { kind: 'series resistance or open', ohm: [0.05, Infinity] }, test: 'drop across the switch above 0.3 V at design load', weight: 5, sharePct: 2.8, intermittent: true, source: 'sae-j564', status: 'read' },
  { id: 'switch-stuck', name: 'switch or relay contact welded', symptom: 'function cannot be turned off', cause: 'inrush, overload', model: { kind: 'short across contact' }, test: 'closed with control off', weight: 1.5, sharePct: 0.8, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'relay-coil-open', name: 'relay coil open or its earth lost', symptom: 'relay does not click', cause: 'broken winding, lost 85 earth', model: { kind: 'open coil circuit' }, test: '86 live, 85 not at earth, or full volts over the coil without a click', weight: 2, sharePct: 1.1, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'relay-contact', name: 'relay contact burnt', symptom: 'clicks but load weak or dead', cause: 'arcing', model: { kind: 'series resistance in contact', ohm: [0.05, Infinity] }, test: '30 live, 87 low under load', weight: 2.5, sharePct: 1.4, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'stop-switch', name: 'stop-lamp switch faulty', symptom: 'stop lamps dead or always on', cause: 'hydraulic switch worn, pedal switch misadjusted', model: { kind: 'open or short of switch' }, test: 'bridge the two switch terminals', weight: 3, sharePct: 1.7, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'solenoid', name: 'starter solenoid contacts burnt', symptom: 'click, no crank, lamps stay bright', cause: 'pitted contacts', model: { kind: 'series resistance', ohm: [0.01, Infinity] }, test: 'drop across the solenoid while cranking above 0.2 V', weight: 3, sharePct: 1.7, intermittent: false, source: 'tm-5-3820-256-24', status: 'read' },
  { id: 'starter-motor', name: 'worn starter brushes or armature', symptom: 'click with bright lamps, drops normal', cause: 'brush or commutator wear', model: { kind: 'load value', ohmFactor: [1.5, 100] }, test: 'full battery voltage at the starter terminal, no crank', weight: 2.5, sharePct: 1.4, intermittent: false, source: 'trouble-shooting-page', status: 'read' },
  { id: 'starter-drag', name: 'starter drags or is shorted', symptom: 'slow crank, very high current, cables warm', cause: 'bushes worn, earth in armature', model: { kind: 'load value', ohmFactor: [0.3, 0.8] }, test: 'current above normal with good voltage path', weight: 1.5, sharePct: 0.8, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'dynamo-brush', name: 'worn dynamo brushes or dirty commutator', symptom: 'no charge or flickering ammeter', cause: 'wear', model: { kind: 'source', effect: 'output low or intermittent' }, test: 'dynamo D low although F fed', weight: 3, sharePct: 1.7, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'cutout-points', name: 'dirty cut-out points', symptom: 'warning lamp glows dimly and grows with speed', cause: 'oxidised points in series', model: { kind: 'series resistance', ohm: [0.05, 1] }, test: 'drop between D and A above limit while charging', weight: 2.5, sharePct: 1.4, intermittent: false, source: 'control-box-faults', status: 'read' },
  { id: 'cutout-open', name: 'cut-out never closes', symptom: 'warning lamp stays on at speed, battery not charged, D voltage high', cause: 'coil or setting', model: { kind: 'open between D and A' }, test: 'D above closing voltage but A at rest voltage', weight: 1.5, sharePct: 0.8, intermittent: false, source: 'control-box-faults', status: 'read' },
  { id: 'cutout-stuck', name: 'cut-out stuck closed', symptom: 'battery discharges through the dynamo at rest, dynamo warm', cause: 'welded points', model: { kind: 'short between D and A at rest' }, test: 'ammeter shows heavy discharge, engine off', weight: 0.8, sharePct: 0.4, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'regulator-high', name: 'regulator set too high or points stuck', symptom: 'lamps burn out, battery boils', cause: 'setting, lost regulator earth', model: { kind: 'source', outputFactor: [1.05, 1.3] }, test: 'charging voltage above 15 V (12 V) or 7.6 V (6 V)', weight: 2, sharePct: 1.1, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'regulator-low', name: 'regulator set too low', symptom: 'battery never full', cause: 'setting, dirty points in field circuit', model: { kind: 'source', outputFactor: [0.85, 0.97] }, test: 'charging voltage below 13.4 V or 6.7 V with light load', weight: 2, sharePct: 1.1, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'polarity', name: 'dynamo or battery polarity reversed', symptom: 'ammeter reads backwards, cut-out chatters; electronic units die', cause: 'battery connected the other way, dynamo not re-polarised', model: { kind: 'sign error' }, test: 'sign of D against battery live side', weight: 1, sharePct: 0.6, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'charge-lamp', name: 'charge warning lamp blown', symptom: 'alternator does not excite, or warning absent', cause: 'lamp in the excitation path', model: { kind: 'open in excitation path' }, test: 'lamp dark with ignition on, engine stopped', weight: 1.5, sharePct: 0.8, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'coil-ballast-open', name: 'ballast open or by-passed', symptom: 'engine fires on the key and dies on release, or coil overheats', cause: 'broken resistor; wrong rewire', model: { kind: 'open or short of ballast' }, test: 'coil voltage while running 0 or full battery', weight: 1.5, sharePct: 0.8, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'points', name: 'dirty or burnt contact points', symptom: 'weak spark, misfire', cause: 'oil, pitting, condenser', model: { kind: 'series resistance', ohm: [0.2, 10] }, test: 'drop over closed points above 0.2 V', weight: 3, sharePct: 1.7, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'ignition-switch', name: 'worn ignition switch', symptom: 'everything switched dies when the key is moved', cause: 'wear', model: { kind: 'series resistance', ohm: [0.05, Infinity] }, test: 'drop from 30 to 15 above limit', weight: 3, sharePct: 1.7, intermittent: true, source: 'common-practice', status: 'common practice' },
  { id: 'parasitic-lamp', name: 'lamp stays on (boot, glove box)', symptom: 'battery flat after days', cause: 'switch misadjusted', model: { kind: 'key-off load', amps: [0.2, 0.9] }, test: 'key-off current about one small lamp', weight: 2, sharePct: 1.1, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'parasitic-accessory', name: 'added accessory draws at rest', symptom: 'battery flat after weeks', cause: 'radio memory, alarm, clock', model: { kind: 'key-off load', amps: [0.005, 0.2] }, test: 'key-off current above 0.05 A', weight: 2, sharePct: 1.1, intermittent: false, source: 'battery-service-module', status: 'read' },
  { id: 'cable-thin', name: 'cable too thin', symptom: 'lamp dim, cable warm, all joints good', cause: 'wrong cable at rewiring', model: { kind: 'series resistance of conductor' }, test: 'drop evenly spread along the cable', weight: 3, sharePct: 1.7, intermittent: false, source: 'common-practice', status: 'common practice' },
  { id: 'gauge-earth', name: 'gauge or stabiliser earth lost', symptom: 'gauges read full or drift together', cause: 'lost earth, stabiliser not pulsing', model: { kind: 'series resistance or open in earth' }, test: 'two gauges wrong alike', weight: 1.5, sharePct: 0.8, intermittent: false, source: 'common-practice', status: 'common practice' },
]

/** How likely two faults are, what connections make up together, and what a fresh rewiring changes. */
export const faultPriors = {
  secondFault: { item: 'no single root cause: plan for a possible second fault, about 1 in 10 cases', value: 0.1, source: 'common-practice', status: 'common practice' },
  connectionShare: { item: 'share of faults in connections, earths, holders and clips taken together', value: 0.33, source: 'common-practice', status: 'common practice' },
  afterRewiringFactor: { item: 'after a fresh rewire raise swapped-wires, wrong-terminal, missing-wire and wrong-fuse by this factor', value: 4, source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FaultPrior>>
