import type { Sourced } from './sources.ts'

/** The hole of a ring for a stud. */
export interface RingHoleRow extends Sourced {
  readonly studs: readonly string[]
  readonly studMm: number
  readonly holeMm: number
}

/** A pre-insulated ring, fork, pin, blade, bullet or butt terminal by its colour: AWG band and mm2 it takes. */
export interface InsulatedTerminalRow extends Sourced {
  readonly colour: string
  readonly awg: string
  readonly minMm2: number
  readonly maxMm2: number
}

/** Studs that rings and forks of a colour are commonly made for; those in `rare` by some makers only. */
export interface InsulatedStudRow extends Sourced {
  readonly colour: string
  readonly ringStuds: readonly string[]
  readonly forkStuds: readonly string[]
  readonly rare: readonly string[]
}

/** Antipodean "auto" cable by its outside diameter: copper, and the colour of terminal. */
export interface AutoCableRow extends Sourced {
  readonly outsideMm: number
  readonly areaMm2: number
  readonly colour: string
}

/** A copper tube lug by cable size and the studs it is usually made for. */
export interface TubeLugRow extends Sourced {
  readonly mm2: number
  readonly awgNear: string
  readonly studs: string
}

/** A push-on blade: tab width and thickness, wire, amps of the tab (an appliance class), and use in old vehicles. */
export interface BladeRow extends Sourced {
  readonly widthMm: number
  readonly thicknessMm: number
  readonly widthIn: string
  readonly minMm2: number
  readonly maxMm2: number
  readonly tabA: number
  readonly use: string
}

/** Amps of a receptacle by wire: continuous (30 K rise), and 45 min on, 15 min off (85 K). */
export interface BladeCurrentRow extends Sourced {
  readonly widthsMm: readonly number[]
  readonly awg: string
  readonly mm2: number
  readonly continuousA: number
  readonly intermittentA: number
}

/** Newtons to push a receptacle on and to pull it off, the first time and the sixth. */
export interface BladeForceRow extends Sourced {
  readonly widthMm: number
  readonly pushOnN: number
  readonly pullOffN: number
  readonly sixthPullOffN: number
}

/** A bullet: its diameter and wire. `guideA` is common practice, and never above what the wire itself may carry. */
export interface BulletRow extends Sourced {
  readonly name: string
  readonly diameterMm: number
  readonly nominal: string
  readonly minMm2: number
  readonly maxMm2: number
  readonly guideA: number
}

/** A socket for bullets and how many it joins. */
export interface BulletSocketRow extends Sourced {
  readonly name: string
  readonly bullets: number
  readonly joins: string
}

/** The hole of a lug should match the stud. */
export const ringHoleRows: readonly RingHoleRow[] = [
  { studs: ['M3'], studMm: 3, holeMm: 3.2, source: 'ring-catalogue-memory', status: 'from memory' },
  { studs: ['M3.5', 'No. 6'], studMm: 3.5, holeMm: 3.7, source: 'ring-catalogue-memory', status: 'from memory' },
  { studs: ['M4', 'No. 8'], studMm: 4, holeMm: 4.3, source: 'ring-catalogue-memory', status: 'from memory' },
  { studs: ['M5', 'No. 10'], studMm: 5, holeMm: 5.3, source: 'terminal-sizing-article', status: 'read' },
  { studs: ['M6'], studMm: 6, holeMm: 6.4, source: 'terminal-sizing-article', status: 'read', note: '6.5 in DIN-pattern lugs (from memory)' },
  { studs: ['1/4 in'], studMm: 6.35, holeMm: 6.7, source: 'ring-catalogue-memory', status: 'from memory' },
  { studs: ['M8', '5/16 in'], studMm: 8, holeMm: 8.4, source: 'ring-catalogue-memory', status: 'from memory' },
  { studs: ['M10', '3/8 in'], studMm: 10, holeMm: 10.5, source: 'ring-catalogue-memory', status: 'from memory' },
  { studs: ['M12'], studMm: 12, holeMm: 13, source: 'ring-catalogue-memory', status: 'from memory' },
  { studs: ['1/2 in'], studMm: 12.7, holeMm: 13.5, source: 'ring-catalogue-memory', status: 'from memory' },
  { studs: ['6BA'], studMm: 2.8, holeMm: 3.2, source: 'ring-catalogue-memory', status: 'from memory' },
  { studs: ['4BA'], studMm: 3.6, holeMm: 3.8, source: 'ring-catalogue-memory', status: 'from memory', note: 'M4 ring (4.3) is the usual substitute' },
  { studs: ['2BA'], studMm: 4.7, holeMm: 5, source: 'ring-catalogue-memory', status: 'from memory', note: '3/16 in / M5 ring (5.3) is the usual substitute' },
  { studs: ['0BA'], studMm: 6, holeMm: 6.4, source: 'ring-catalogue-memory', status: 'from memory' },
]

/**
 * Pre-insulated terminals. Wire of 3 mm2 (44/0.30) falls between blue and yellow: take an uninsulated one. Areas of single gauges are
 * by the gauge definition. A seller's page that gives yellow as 10-8 AWG stands alone.
 */
export const insulatedTerminalRows: readonly InsulatedTerminalRow[] = [
  { colour: 'yellow (small)', awg: '26-22', minMm2: 0.12, maxMm2: 0.35, source: 'insulated-terminal-article', status: 'mixed', note: 'the mm2 band is from memory' },
  { colour: 'clear', awg: '24-20', minMm2: 0.2, maxMm2: 0.5, source: 'insulated-terminal-article', status: 'mixed', note: 'the mm2 band is from memory' },
  { colour: 'red', awg: '22-16', minMm2: 0.5, maxMm2: 1.5, source: 'insulated-terminal-article', status: 'read', note: 'some makers 22-18' },
  { colour: 'blue', awg: '16-14', minMm2: 1.5, maxMm2: 2.5, source: 'insulated-terminal-article', status: 'read' },
  { colour: 'yellow with black', awg: '16-14 heavy duty', minMm2: 1.5, maxMm2: 2.5, source: 'insulated-terminal-article', status: 'mixed', note: 'the mm2 band is from memory' },
  { colour: 'yellow', awg: '12-10', minMm2: 4, maxMm2: 6, source: 'insulated-terminal-article', status: 'read', note: 'some makers print 2.5-6' },
  { colour: 'red (large)', awg: '8', minMm2: 8.4, maxMm2: 8.4, source: 'insulated-terminal-article', status: 'read' },
  { colour: 'blue (large)', awg: '6', minMm2: 13.3, maxMm2: 13.3, source: 'insulated-terminal-article', status: 'read' },
  { colour: 'yellow (large)', awg: '4', minMm2: 21.2, maxMm2: 21.2, source: 'insulated-terminal-article', status: 'read' },
  { colour: 'brown', awg: '2', minMm2: 33.6, maxMm2: 33.6, source: 'insulated-terminal-article', status: 'read' },
  { colour: 'blue (large)', awg: '1/0', minMm2: 53.5, maxMm2: 53.5, source: 'insulated-terminal-article', status: 'read' },
  { colour: 'yellow (large)', awg: '2/0', minMm2: 67.4, maxMm2: 67.4, source: 'insulated-terminal-article', status: 'read' },
  { colour: 'red (large)', awg: '3/0', minMm2: 85, maxMm2: 85, source: 'insulated-terminal-article', status: 'read' },
  { colour: 'blue (large)', awg: '4/0', minMm2: 107, maxMm2: 107, source: 'insulated-terminal-article', status: 'read' },
]

/** Rings are preferred: forks may work loose. */
export const insulatedStudRows: readonly InsulatedStudRow[] = [
  { colour: 'red', ringStuds: ['M3', 'M3.5', 'M4', 'M5', 'M6', 'M8', 'M10'], forkStuds: ['M3', 'M3.5', 'M4', 'M5', 'M6'], rare: ['fork M6', 'ring M10'], source: 'common-practice', status: 'common practice' },
  { colour: 'blue', ringStuds: ['M3', 'M3.5', 'M4', 'M5', 'M6', 'M8', 'M10', 'M12'], forkStuds: ['M3', 'M3.5', 'M4', 'M5', 'M6'], rare: ['ring M12'], source: 'common-practice', status: 'common practice' },
  { colour: 'yellow', ringStuds: ['M4', 'M5', 'M6', 'M8', 'M10', 'M12'], forkStuds: ['M4', 'M5', 'M6', 'M8'], rare: ['fork M8'], source: 'common-practice', status: 'common practice' },
]

/** A cable seller's sheet gives 1.13 mm2 (14/0.32) for 3 mm, 1.84 for 4, 2.90 for 5 and 4.59 for 6. */
export const autoCableRows: readonly AutoCableRow[] = [
  { outsideMm: 2, areaMm2: 0.55, colour: 'red', source: 'traveller-wiring-page', status: 'read' },
  { outsideMm: 2.5, areaMm2: 0.64, colour: 'red', source: 'traveller-wiring-page', status: 'read' },
  { outsideMm: 3, areaMm2: 0.85, colour: 'red/blue', source: 'traveller-wiring-page', status: 'read' },
  { outsideMm: 4, areaMm2: 1.85, colour: 'blue', source: 'traveller-wiring-page', status: 'read' },
  { outsideMm: 5, areaMm2: 2.9, colour: 'yellow/blue', source: 'traveller-wiring-page', status: 'read' },
  { outsideMm: 6, areaMm2: 4.6, colour: 'yellow', source: 'traveller-wiring-page', status: 'read' },
]

/** Also made with M5 and M6 for 10 mm2 and M6 for 16 to 25 mm2 (from memory). A chart of low authority. */
export const tubeLugRows: readonly TubeLugRow[] = [
  { mm2: 10, awgNear: '8', studs: 'M6-M8', source: 'lug-chart', status: 'read' },
  { mm2: 16, awgNear: '6', studs: 'M8-M10', source: 'lug-chart', status: 'read' },
  { mm2: 25, awgNear: '4', studs: 'M8-M10', source: 'lug-chart', status: 'read' },
  { mm2: 35, awgNear: '2', studs: 'M10-M12', source: 'lug-chart', status: 'read' },
  { mm2: 50, awgNear: '1/0', studs: 'M10-M12', source: 'lug-chart', status: 'read' },
  { mm2: 70, awgNear: '2/0', studs: 'M12', source: 'lug-chart', status: 'read' },
]

/** Push-on blades. British practice counts 6.3 mm as 17.5 A and 9.5 mm as 35 A (from memory). */
export const bladeRows: readonly BladeRow[] = [
  { widthMm: 2.8, thicknessMm: 0.5, widthIn: '0.110', minMm2: 0.25, maxMm2: 1, tabA: 6, use: 'instrument illumination, warning lamps, small relays', source: 'blade-catalogue-memory', status: 'from memory' },
  { widthMm: 2.8, thicknessMm: 0.8, widthIn: '0.110', minMm2: 0.5, maxMm2: 1.5, tabA: 6, use: 'later multi-way connectors', source: 'blade-catalogue-memory', status: 'from memory' },
  { widthMm: 4.8, thicknessMm: 0.5, widthIn: '0.187', minMm2: 0.5, maxMm2: 1.5, tabA: 16, use: 'switches, flasher units, small relays', source: 'blade-catalogue-memory', status: 'from memory' },
  { widthMm: 4.8, thicknessMm: 0.8, widthIn: '0.187', minMm2: 0.5, maxMm2: 2.5, tabA: 16, use: 'switches, loudspeakers', source: 'blade-catalogue-memory', status: 'from memory' },
  { widthMm: 6.3, thicknessMm: 0.8, widthIn: '0.250', minMm2: 0.5, maxMm2: 6, tabA: 25, use: 'general, relays, lamps, fuse boxes; three receptacle sizes 0.5-1.5, 1.5-2.5, 4-6', source: 'blade-catalogue-memory', status: 'from memory' },
  { widthMm: 9.5, thicknessMm: 1.2, widthIn: '0.375', minMm2: 2.5, maxMm2: 6, tabA: 32, use: 'charging lead, headlamp relay and dynamo/alternator main terminals', source: 'blade-catalogue-memory', status: 'from memory' },
]

/**
 * Receptacles where the wire fits. Which series takes which wire is inferred from a page that ran its columns together; wire
 * areas are from memory.
 */
export const bladeCurrentRows: readonly BladeCurrentRow[] = [
  { widthsMm: [6.3, 5.2, 4.8], awg: '22', mm2: 0.326, continuousA: 3, intermittentA: 6, source: 'ul310-catalogue-2011', status: 'read' },
  { widthsMm: [6.3, 5.2, 4.8], awg: '20', mm2: 0.519, continuousA: 4, intermittentA: 8, source: 'ul310-catalogue-2011', status: 'read' },
  { widthsMm: [6.3, 5.2, 4.8], awg: '18', mm2: 0.823, continuousA: 7, intermittentA: 14, source: 'ul310-catalogue-2011', status: 'read' },
  { widthsMm: [6.3, 5.2, 4.8], awg: '16', mm2: 1.31, continuousA: 10, intermittentA: 20, source: 'ul310-catalogue-2011', status: 'read' },
  { widthsMm: [6.3, 5.2, 4.8], awg: '14', mm2: 2.08, continuousA: 15, intermittentA: 30, source: 'ul310-catalogue-2011', status: 'read' },
  { widthsMm: [6.3, 5.2, 4.8], awg: '12', mm2: 3.31, continuousA: 20, intermittentA: 40, source: 'ul310-catalogue-2011', status: 'read' },
  { widthsMm: [6.3, 5.2, 4.8], awg: '10', mm2: 5.26, continuousA: 24, intermittentA: 48, source: 'ul310-catalogue-2011', status: 'read' },
  { widthsMm: [2.8], awg: '22', mm2: 0.326, continuousA: 2, intermittentA: 4, source: 'ul310-catalogue-2011', status: 'read' },
  { widthsMm: [2.8], awg: '20', mm2: 0.519, continuousA: 3, intermittentA: 6, source: 'ul310-catalogue-2011', status: 'read' },
  { widthsMm: [2.8], awg: '18', mm2: 0.823, continuousA: 4, intermittentA: 8, source: 'ul310-catalogue-2011', status: 'read' },
  { widthsMm: [2.8], awg: '16', mm2: 1.31, continuousA: 5, intermittentA: 10, source: 'ul310-catalogue-2011', status: 'read' },
]

/** Typical, with a standard tab. One that pulls off with much less is stretched: replace it (common practice). */
export const bladeForceRows: readonly BladeForceRow[] = [
  { widthMm: 6.35, pushOnN: 37.8, pullOffN: 33.4, sixthPullOffN: 24.5, source: 'blade-force-page', status: 'read' },
  { widthMm: 4.75, pushOnN: 26.8, pullOffN: 44.6, sixthPullOffN: 26.8, source: 'blade-force-page', status: 'read' },
  { widthMm: 2.79, pushOnN: 27, pullOffN: 31.3, sixthPullOffN: 17.9, source: 'blade-force-page', status: 'read' },
]

/**
 * Sizes do not mix: 4.7 in a 5.0 socket is loose, 4.0 in a 3.9 socket tight. A connector maker's page calls 3.9 to 4.0 mm British;
 * a magazine and trade practice call 3.9 Japanese and 4.7 British.
 */
export const bulletRows: readonly BulletRow[] = [
  { name: 'British brass bullet, crimp or solder, rubber-covered snap connector', diameterMm: 4.75, nominal: '3/16 in (4.7)', minMm2: 0.65, maxMm2: 3, guideA: 17.5, source: 'bullet-seller-memory', status: 'from memory', note: '9/0.30-14/0.30 (1 mm2), 28/0.30 (2 mm2), 44/0.30 (3 mm2): a bullet bore for each' },
  { name: 'Japanese bullet, open-barrel crimp, clear PVC sleeve', diameterMm: 3.9, nominal: '3.9', minMm2: 0.5, maxMm2: 1.25, guideA: 10, source: 'bullet-seller-memory', status: 'from memory', note: '3.9 mm, clear insulator, most used on Japanese machines: read in a classic-motorcycle magazine 2020; wire range from memory' },
  { name: 'Japanese small bullet', diameterMm: 3.5, nominal: '3.5', minMm2: 0.5, maxMm2: 1.25, guideA: 8, source: 'bullet-seller-memory', status: 'from memory', note: "size read on a connector maker's page" },
  { name: 'continental round pin, pre-insulated red', diameterMm: 4, nominal: '4', minMm2: 0.5, maxMm2: 1.5, guideA: 10, source: 'bullet-seller-memory', status: 'from memory', note: 'that only the red bullet mates with 4 mm sockets, blue and yellow being larger: read (workshop blog 2009)' },
  { name: 'continental round pin, pre-insulated blue', diameterMm: 5, nominal: '5', minMm2: 1.5, maxMm2: 2.5, guideA: 15, source: 'bullet-seller-memory', status: 'from memory' },
  { name: 'continental round pin, pre-insulated yellow', diameterMm: 5, nominal: '5', minMm2: 4, maxMm2: 6, guideA: 20, source: 'bullet-seller-memory', status: 'from memory' },
  { name: 'American bullet, small', diameterMm: 3.96, nominal: '0.156 in', minMm2: 0.35, maxMm2: 2, guideA: 10, source: 'bullet-seller-memory', status: 'from memory', note: 'AWG 22-14' },
  { name: 'American bullet, large', diameterMm: 4.57, nominal: '0.180 in', minMm2: 0.8, maxMm2: 2, guideA: 15, source: 'bullet-seller-memory', status: 'from memory', note: 'AWG 18-14' },
  { name: 'American bullet, heavy', diameterMm: 4.95, nominal: '0.195 in', minMm2: 3.3, maxMm2: 5.3, guideA: 20, source: 'bullet-seller-memory', status: 'from memory', note: 'AWG 12-10' },
]

/** Each bullet must enter to the middle: mark the depth on the wire. Renew rubber-covered ones when the steel liner rusts. */
export const bulletSocketRows: readonly BulletSocketRow[] = [
  { name: 'single in-line', bullets: 2, joins: 'one bullet each end', source: 'common-practice', status: 'common practice' },
  { name: 'double', bullets: 4, joins: 'two bullets each end, all four common', source: 'common-practice', status: 'common practice' },
  { name: 'five-way', bullets: 10, joins: 'five each end, all common, earth or lighting junction', source: 'common-practice', status: 'common practice' },
  { name: 'female receptacle on wire', bullets: 1, joins: 'crimped socket with sleeve, mates one bullet', source: 'common-practice', status: 'common practice' },
]
