import type { Sourced } from './sources.ts'

/** A rule of fitting and laying wires: a figure, or least and most, in its unit; or a rule in words without one. */
export interface FittingRule extends Sourced {
  readonly rule: string
  readonly value?: number
  readonly toValue?: number
  readonly unit?: string
}

/** Terminals on a stud. */
export const studRules = {
  mostBeforeBusBar: { rule: 'most terminals on one stud before a small bus bar across adjacent studs is used', value: 4, unit: 'terminals', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-174' },
  mostConductors: { rule: 'most conductors on one terminal stud', value: 4, unit: 'terminals', source: 'boat-standard-summary', status: 'read' },
  mostLugs: { rule: 'lugs per stud, or that many less one plus a bus bar', value: 4, unit: 'terminals', source: 'aviation-slides-2003', status: 'read', note: 'or three lugs and a bus bar' },
  largestBelow: { rule: 'largest terminal at the bottom, smallest on top; crimp barrels turned belly-to-belly or in a V', source: 'aviation-slides-2003', status: 'read' },
  orderUpward: { rule: 'order upward: terminals, flat washer, lock washer, nut; no washer between two copper lugs or in the current path', source: 'faa-handbook-copy', status: 'read', note: "a battery maker's manual says the same" },
  throughFaces: { rule: 'current must pass through the terminal faces, not through the stud', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-174' },
  threadsAboveNut: { rule: 'threads showing above the nut, at least', value: 1.5, unit: 'threads', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Blades: locking and insulation. */
export const bladeRules = {
  dimple: { rule: 'plain receptacle holds by a dimple in the hole or dimple of the tab', source: 'iec61210-scope', status: 'read' },
  positiveLocking: { rule: 'receptacles with positive locking are outside IEC 61210; use them in moving or vibrating places', source: 'iec61210-scope', status: 'mixed', note: 'what to use is common practice' },
  frictionPullN: { rule: 'friction connectors (blade, bullet) only if they stand 6 lbf (26.7 N) along the wire for 1 minute', value: 26.7, unit: 'N', source: 'boat-handbook', status: 'read' },
  feedSleeve: { rule: 'feed sleeve goes on the wire before crimping and must cover the whole receptacle; receptacle (not tab) on the supply side', source: 'common-practice', status: 'common practice' },
  oneWire: { rule: 'one crimp, one wire, unless the two wires together lie in the barrel range', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Stripping. */
export const stripRules = {
  flushEnd: { rule: 'no insulation inside the wire barrel; conductor end flush with or slightly beyond the barrel', source: 'terminal-maker-specs', status: 'read' },
  centreStop: { rule: 'splice: conductor bottoms on the centre stop; end cap: conductor bottoms in the cap', source: 'terminal-maker-specs', status: 'read' },
  barrelPlus: { rule: 'rule of thumb: strip = barrel length + 0.5..1 mm', source: 'common-practice', status: 'common practice' },
  bellMouth: { rule: 'keep a barrel conductor end 0.5-1 mm proud (open barrel) and a small bell-mouth at the wire side', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Pulling at a crimp. */
export const pullRules = {
  asStrongAsWire: { rule: 'joint at least as strong as the wire itself', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-174' },
  barrelAlone: { rule: 'test only the wire barrel: open or disable the insulation grip, or strip at least 13 mm so no insulation lies under it', source: 'applicator-manual', status: 'read' },
  handPull: { rule: 'bench check: firm hand pull on every crimp, about 30-50 N for 1 mm2 and up', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Soldering and crimping. */
export const solderRules = {
  leastGap: { rule: 'gap between insulation and soldered joint, least', value: 1, unit: 'x wire diameter incl. insulation', source: 'stp-11-25r13', status: 'read' },
  mostGap: { rule: 'gap, most', value: 2, unit: 'x wire diameter incl. insulation', source: 'stp-11-25r13', status: 'read' },
  largeGripPct: { rule: 'insulation crimp: large grip closes round at least', value: 88, unit: '% of the wire', source: 'crimp-handbook-2009', status: 'read' },
  smallGripPct: { rule: 'insulation crimp: small grip, at least', value: 50, unit: '% and hold the top', source: 'crimp-handbook-2009', status: 'read' },
  bendTestMm: { rule: 'insulation-crimp bend test: unstripped wire, push at 76 mm, 90 deg one way, 180 deg back', value: 76, unit: 'mm', source: 'terminal-maker-specs', status: 'read' },
  ratchetTool: { rule: 'crimp tool: ratchet type, matched to terminal and wire size', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-178' },
  solderMeltsC: { rule: 'tin-lead 60/40 solder melts at', value: 188, unit: 'C (183 solid)', source: 'solder-memory', status: 'from memory' },
  ironC: { rule: 'iron tip for wires up to 2.5 mm2', value: 350, unit: 'C (315-380)', source: 'workmanship-memory', status: 'from memory' },
  rosinOnly: { rule: 'flux: rosin only; no acid flux on wiring', source: 'common-practice', status: 'common practice' },
  noTinnedCrimp: { rule: 'do not crimp a tinned end, do not tin a crimp afterwards', source: 'common-practice', status: 'common practice' },
  supportMm: { rule: 'support a soldered wire within', value: 50, unit: 'mm of the joint', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Wires in one screw terminal. */
export const screwRules = {
  terminalBlock: { rule: 'terminal block: more than one conductor only in screw clamps, and only if the maker states type, size and number', value: 1, unit: 'wires', source: 'terminal-block-article', status: 'read' },
  screwless: { rule: 'screwless clamp: each conductor clamped on its own', value: 1, unit: 'wires', source: 'terminal-block-article', status: 'read', note: 'EN 60999 clause 7.7' },
  mostSouthAfrica: { rule: 'most wires to one terminal, South African wiring code', value: 3, unit: 'wires', source: 'sans10142-forum', status: 'read' },
  identified: { rule: 'terminals for more than one conductor must be so identified (NEC 110.14)', value: 1, unit: 'wires', source: 'nec-110-14-forum', status: 'read' },
  twinFerrule: { rule: 'twin ferrule puts two equal wires in one clamp; made 2 x 0.25 to 2 x 16 mm2', value: 2, unit: 'wires', source: 'wire-seller-page', status: 'read' },
  tinnedCreeps: { rule: 'solder-tinned strand ends under a screw creep and work loose: use a ferrule', source: 'ferrule-workshop-page', status: 'read' },
  oldFuseBox: { rule: 'old fuse-box clamp: one wire, or two of equal size in one twin ferrule; never three; join further feeds at a ring stud or splice', value: 2, unit: 'wires', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Splices: where and how. */
export const spliceRules = {
  staggered: { rule: 'splices staggered along the bundle so that it stays slim', source: 'aviation-exam-page', status: 'read', note: 'the same in AC 43.13-1B from memory' },
  fromTerminalMm: { rule: 'not nearer to a terminal or connector than', value: 305, unit: 'mm (12 in)', source: 'ac43-13-1b-ch11-memory', status: 'from memory' },
  mostInWire: { rule: 'splices in one wire between two terminations, most', value: 1, unit: 'number', source: 'ac43-13-1b-ch11-memory', status: 'from memory' },
  nowhere: { rule: 'none inside conduit, none in grommets, none where the loom flexes', source: 'ac43-13-1b-ch11-memory', status: 'from memory', note: 'and trade knowledge' },
  apartMm: { rule: 'spacing of staggered splices, at least', value: 40, unit: 'mm (one splice length plus sleeve)', source: 'common-practice', status: 'common practice' },
  twistTurns: { rule: 'twisted-and-soldered in-line splice: turns each side', value: 3, unit: 'turns', source: 'tm-5-4120-393-14', status: 'read', note: 'par. 4-34' },
  solderNotAlone: { rule: 'solder not the only mechanical hold (boats)', source: 'boat-handbook', status: 'read' },
  solderedLug: { rule: 'exception: battery lug with solder contact this long', value: 1.5, unit: 'x conductor diameter', source: 'abyc-e11-memory', status: 'from memory', note: 'the handbook page read was cut after 1.5' },
  tapeOverlap: { rule: 'insulation tape for splices: overlap', value: 0.5, unit: 'fraction, two layers in opposite direction', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Holes and grommets. */
export const grommetRules = {
  edgeDistanceMm: { rule: 'grommet wherever the bundle cannot be clamped to keep this distance from the edge of the hole', value: 9.5, unit: 'mm (3/8 in)', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-115' },
  thinMaterialMm: { rule: 'material thinner than this: grommet required', value: 3.2, unit: 'mm (1/8 in)', source: 'mil-t-81821', status: 'read' },
  roundedEdge: { rule: 'thicker material without grommet: round the edge to this share of the thickness', value: 0.5, unit: 'x thickness', source: 'mil-t-81821', status: 'read' },
  protected: { rule: 'every conductor through a bulkhead or rigid surface protected from abrasion', source: 'cfr33-183-445', status: 'read' },
  noSideLoad: { rule: 'no side load of the bundle on the grommet edge', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-115' },
  boreOverBundle: { rule: 'choose bore = bundle diameter, to +15 %; closed dirt-and-water side: bore up to 10 % smaller than the bundle', value: 1.15, unit: 'x bundle diameter', source: 'common-practice', status: 'common practice' },
  passConnector: { rule: 'hole must pass the largest connector with its sleeve, or the connector is fitted after the pull', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Sleeve, tape and conduit. */
export const sleeveRules = {
  tapeOverlap: { rule: 'tape overlap, share of its width', value: 0.5, unit: 'fraction', source: 'how-to-page', status: 'read' },
  boreOverBundle: { rule: 'sleeve bore against bundle diameter', value: 1.15, unit: 'x (1.1-1.25)', source: 'common-practice', status: 'common practice' },
  overCollarMm: { rule: 'sleeve runs over the back of a connector or grommet collar by at least', value: 10, unit: 'mm (10-15)', source: 'common-practice', status: 'common practice' },
  endsSecured: { rule: 'insulating tubing secured at its ends by tie or clamp', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-96 h' },
  drainHole: { rule: 'drain hole at the lowest point of tubing and drip loops', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-96 p, and US Army TM 1-1500-204-23-4' },
  drainSpacingMm: { rule: 'horizontal protective pipe: drain holes this far apart, 6 mm diameter', value: 1520, unit: 'mm', source: 'cfr46-183-340', status: 'read' },
  terminalShrinkMm: { rule: 'heat-shrink piece put over an uninsulated small terminal', value: 25, unit: 'mm (1 in)', source: 'tm-5-4120-393-14', status: 'read' },
  endTurns: { rule: 'end of braid or tape bound with three turns or a heat-shrink piece', value: 3, unit: 'turns', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Heat-shrink tube. */
export const heatShrinkRules = {
  ratios: { rule: 'ratios made: 2:1, 3:1, 4:1, 6:1', source: 'heat-shrink-guides', status: 'read' },
  shorteningPct: { rule: 'shortening on shrinking', value: 5, toValue: 15, unit: '% of length', source: 'heat-shrink-guides', status: 'read' },
  expandedOverWire: { rule: 'choose expanded bore about', value: 1.5, unit: 'x the wire or joint', source: 'heat-shrink-guides', status: 'read' },
  recoveredBelow: { rule: 'recovered bore must be below the smallest diameter covered', source: 'heat-shrink-guides', status: 'read' },
  wetPlaces: { rule: 'adhesive-lined in wet places (wheel arches, under floor, engine bay)', source: 'boat-shop-tips', status: 'read', note: 'the places are common practice' },
  overlapMm: { rule: 'overlap on to sound insulation each side', value: 10, unit: 'mm, or 2 diameters if more', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Slack, service loop and drip loop. */
export const slackRules = {
  deflectionMm: { rule: 'most deflection between supports by normal hand pressure', value: 12.7, unit: 'mm (1/2 in)', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-118, and US Navy NAVEDTRA 14009/14112' },
  reterminations: { rule: 'spare length at a terminal: enough to re-terminate this often', value: 2, unit: 'times', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-118, and a military facilities handbook' },
  besidesLoop: { rule: 'that spare is in addition to drip loop and to movement of the part', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-118' },
  spareMm: { rule: 'spare length as a figure: two re-terminations', value: 50, unit: 'mm (about 25 each)', source: 'common-practice', status: 'common practice' },
  dripLoop: { rule: 'drip loop wherever wires run down to a connector, block or panel', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-96 x, and US Army TM 1-1500-204-23-4' },
  dripLoopMm: { rule: 'drip loop depth below the entry', value: 50, unit: 'mm (at least the bend radius)', source: 'common-practice', status: 'common practice' },
  hinge: { rule: 'across a hinge the bundle twists rather than bends', source: 'ac43-13-1b-ch11', status: 'read', note: 'par. 11-115' },
  sparePct: { rule: 'spare conductors', value: 10, unit: '%', source: 'facilities-handbook', status: 'read' },
  largestBundle: { rule: 'largest bundle, aim', value: 75, unit: 'wires, or 38-51 mm diameter', source: 'faa-handbook-second-copy', status: 'read' },
  cuttingPct: { rule: 'length added when cutting a loom from route length', value: 5, unit: '% plus 50 mm each end', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Largest pulling force: 50 N/mm2 of copper in Europe, 70 in America. Count only wires that are tied to the cord. */
export const pullForceRules = {
  copperNPerMm2: { rule: 'copper conductors, pulling head or stocking, no armour', value: 50, unit: 'N per mm2 of all conductors pulled', source: 'cable-pulling-page', status: 'read' },
  aluminiumNPerMm2: { rule: 'aluminium conductors', value: 30, unit: 'N per mm2', source: 'cable-pulling-page', status: 'read' },
  copperEyeNPerMm2: { rule: 'copper, pulling eye, power-cable catalogue', value: 70.2, unit: 'N per mm2 (7.16 kgf/mm2)', source: 'power-cable-catalogue', status: 'read' },
  copperAmerican: { rule: 'copper, pulling eye, American practice', value: 0.008, unit: 'lbf per circular mil (= 70 N/mm2)', source: 'icea-guide', status: 'read' },
  jacketNPerMm2: { rule: 'grip over PVC or rubber jacket: share of jacket area pi t (D-t)', value: 6.9, unit: 'N per mm2 of jacket (0.7 kgf/mm2)', source: 'power-cable-catalogue', status: 'read' },
  breakingShare: { rule: 'no more than this share of breaking strength', value: 0.2, unit: 'fraction', source: 'cable-maker-rules', status: 'read' },
  sidewallNPerM: { rule: 'sidewall pressure: T divided by bend radius, American practice', value: 4380, unit: 'N per m of radius (300 lbf/ft)', source: 'icea-guide', status: 'read' },
  sidewallMediumNPerM: { rule: 'sidewall pressure, medium-voltage cable', value: 29200, unit: 'N per m of radius', source: 'cable-leaflet', status: 'read' },
  restNPerMm2: { rule: 'static tension left in flexible cable after laying', value: 15, unit: 'N per mm2', source: 'vde0298-memory', status: 'from memory' },
  oldRubberN: { rule: 'old rubber or cotton wire drawn out as the pull-through: treat as having no safe strength', value: 0, unit: 'N', source: 'common-practice', status: 'common practice' },
  handPullN: { rule: 'hand pull in a body cavity, loom of thin wires', value: 100, unit: 'N, and never on the terminals', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Earth straps and fixing a battery. */
export const earthRules = {
  strapOverStarter: { rule: 'earth strap area at least that of the positive starter cable', value: 1, unit: 'x', source: 'common-practice', status: 'common practice' },
  engineStraps: { rule: 'engine and gearbox on rubber: one strap engine to body or chassis as well as battery to body', value: 2, unit: 'straps', source: 'common-practice', status: 'common practice' },
  brightMetal: { rule: "bare bright metal under the lug at least the lug's own area; sealed with grease or paint afterwards", source: 'common-practice', status: 'common practice' },
  bondOhm: { rule: 'bonding joint resistance, most', value: 0.003, unit: 'ohm', source: 'ac43-13-1b-ch11-memory', status: 'from memory', note: 'bonding paragraphs' },
  noSpring: { rule: 'battery terminal must not rely on spring tension', source: 'cfr33-183-420', status: 'read', note: '183.420(g)' },
  batteryMovementMm: { rule: 'battery movement, most, under 90 lbf or twice its weight (the less)', value: 25.4, unit: 'mm', source: 'cfr33-183-420', status: 'read', note: '183.420(a)' },
  coveredLive: { rule: 'live terminals always energised: boot, cap or cover', source: 'cfr33-183-445', status: 'read', note: '183.445(b)' },
  unfusedStarter: { rule: 'unfused starter cable: clear of engine block and fuel parts, out of the wet for its whole length', source: 'boat-standard-summary', status: 'read' },
} as const satisfies Readonly<Record<string, FittingRule>>

/** Print on labels. */
export const printRules = {
  widthOverHeight: { rule: 'letter width : height', value: 0.6, toValue: 1, unit: 'ratio; 1:1 for curved surfaces such as small pipes and cables', source: 'dod-hdbk-791', status: 'read' },
  strokeDark: { rule: 'stroke width, dark on light', value: 0.167, unit: 'x height', source: 'dod-hdbk-791', status: 'read' },
  strokeLight: { rule: 'stroke width, light on dark', value: 0.125, toValue: 0.143, unit: 'x height', source: 'dod-hdbk-791', status: 'read' },
  mmPerPoint: { rule: 'point = 1/72 in; capital height about 0.7 of the point size (0.7 common practice)', value: 0.353, unit: 'mm per point', source: 'dod-hdbk-791', status: 'read' },
  wireCapitalsMm: { rule: 'smallest print for a wire label read at 0.4-0.5 m: capitals', value: 2, unit: 'mm (about 8 point)', source: 'common-practice', status: 'common practice', note: 'from the 1:200 to 1:250 rules' },
  fromTerminalMm: { rule: 'label not nearer to the terminal than', value: 30, unit: 'mm, and within 75 mm, so that re-terminating spares it', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, FittingRule>>
