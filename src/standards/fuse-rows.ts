import type { Sourced } from './sources.ts'

/** What the amps printed on a fuse are: what it carries for ever, what blows it in time, or nobody knows. */
export type PrintedMeans = 'continuous' | 'blow' | 'unknown'

/** A kind of fuse. */
export interface FuseKindRow extends Sourced {
  readonly names: readonly string[]
  readonly printed: PrintedMeans
  readonly shape: string
}

/**
 * How long a fuse lasts at a multiple of its printed rating: at least `minS` and at most `maxS` seconds, null where that side is
 * not limited; for ratings from `fromA` to `toA` where the limits differ by rating.
 */
export interface FuseBandRow extends Sourced {
  readonly kinds: readonly FuseKind[]
  readonly multiple: number
  readonly minS: number | null
  readonly maxS: number | null
  readonly fromA?: number
  readonly toA?: number
}

/** Colour of a fuse of this rating. */
export interface FuseColourRow extends Sourced {
  readonly kinds: readonly FuseKind[]
  readonly ratingA: number
  readonly colour: string
}

/** A British fuse: the printed figure blows it in time, `atOnceA` blows it at once, and it carries `continuousA`. */
export interface BritishFuseRow extends Sourced {
  readonly colour: string
  readonly printedA: number
  readonly continuousA: number
  readonly atOnceA: number
}

/** The American fuse to fit for a British marked rating. Advice: it does not follow the half rule exactly. */
export interface BritishToAmericanRow extends Sourced {
  readonly britishA: number
  readonly americanA: number
}

/** The share of its rating at which a fuse may be loaded for ever. */
export interface FuseLoadingRow extends Sourced {
  readonly basis: string
  readonly share: number
}

/** The largest breaker and fuse for a copper wire of an aircraft, by AWG; null where the chart has none. */
export interface WireProtectorRow extends Sourced {
  readonly awg: string
  readonly breakerA: number | null
  readonly fuseA: number
}

/** The most millivolts that a fuse may drop at its rating. */
export interface FuseDropRow extends Sourced {
  readonly kind: FuseKind
  readonly fromA: number
  readonly toA: number
  readonly maxDropMv: number
}

/** Kinds of fuse. */
export const fuseKinds = {
  blade: { names: ['ISO 8820-3 type C', 'standard blade'], printed: 'continuous', shape: 'flat blade', source: 'fuse-pages', status: 'read' },
  'mini-blade': { names: ['ISO 8820-3 type F', 'mini'], printed: 'continuous', shape: 'small flat blade', source: 'fuse-pages', status: 'read' },
  'maxi-blade': { names: ['DIN 72581-3 form E', 'maxi'], printed: 'continuous', shape: 'large flat blade', source: 'din72581-3-extract', status: 'read' },
  torpedo: { names: ['continental', 'DIN 72581-1', 'ceramic'], printed: 'unknown', shape: '6 x 25 mm, conical ends', source: 'fuse-article-2007', status: 'read', note: 'no readable limits of time and current were found for DIN 72581-1' },
  'glass-agx': { names: ['AGX', '8AG'], printed: 'continuous', shape: 'glass tube, 1/4 x 1 in', source: 'glass-sheet-2008', status: 'read' },
  'glass-agc': { names: ['AGC', 'SAE J554', 'American glass'], printed: 'continuous', shape: 'glass tube, 1/4 x 1 1/4 in', source: 'sae-j554-memory', status: 'from memory', note: 'its sheet was not found; 110 % and 135 % as those of AGX' },
  'british-glass': { names: ['British', 'British ceramic'], printed: 'blow', shape: 'glass or ceramic tube, 1.15625 in long (American 1.25 in)', source: 'british-fuse-article', status: 'read' },
} as const satisfies Readonly<Record<string, FuseKindRow>>

export type FuseKind = keyof typeof fuseKinds

/** Time and current, by kind. The 135 % limit of blade fuses is 1800 s in ISO 8820-3 and 600 s for one make. */
export const fuseBandRows: readonly FuseBandRow[] = [
  { kinds: ['blade', 'mini-blade'], multiple: 1.1, minS: 360000, maxS: null, source: 'fuse-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], multiple: 1.35, minS: 0.75, maxS: 1800, source: 'iso8820-3-quote', status: 'read', note: 'another maker: see the row of 600 s' },
  { kinds: ['blade'], multiple: 1.35, minS: null, maxS: 600, source: 'fuse-pages', status: 'read', note: 'one make of standard blade' },
  { kinds: ['blade', 'mini-blade'], multiple: 1.6, minS: 0.25, maxS: 50, source: 'iso8820-3-memory', status: 'from memory' },
  { kinds: ['blade', 'mini-blade'], multiple: 2, minS: 0.15, maxS: 5, source: 'iso8820-3-memory', status: 'from memory' },
  { kinds: ['blade', 'mini-blade'], multiple: 3.5, minS: 0.04, maxS: 0.5, source: 'iso8820-3-memory', status: 'from memory' },
  { kinds: ['blade', 'mini-blade'], multiple: 6, minS: 0.02, maxS: 0.1, source: 'iso8820-3-memory', status: 'from memory' },
  { kinds: ['maxi-blade'], multiple: 1, minS: 360000, maxS: null, source: 'din72581-3-extract', status: 'read' },
  { kinds: ['maxi-blade'], multiple: 1.35, minS: 60, maxS: 1800, source: 'din72581-3-extract', status: 'read' },
  { kinds: ['maxi-blade'], multiple: 2, minS: 2, maxS: 60, source: 'din72581-3-extract', status: 'read' },
  { kinds: ['maxi-blade'], multiple: 3.5, minS: 0.2, maxS: 7, source: 'din72581-3-extract', status: 'read' },
  { kinds: ['glass-agx'], multiple: 1.1, minS: 14400, maxS: null, fromA: 0.0625, toA: 30, source: 'glass-sheet-2008', status: 'read' },
  { kinds: ['glass-agx'], multiple: 1.35, minS: null, maxS: 3600, fromA: 0.0625, toA: 30, source: 'glass-sheet-2008', status: 'read' },
  { kinds: ['glass-agx'], multiple: 2, minS: null, maxS: 5, fromA: 0.0625, toA: 2, source: 'glass-sheet-2008', status: 'read', note: 'an older sheet prints 5 s, which could be misread as for all ratings' },
  { kinds: ['glass-agx'], multiple: 2, minS: null, maxS: 120, fromA: 2.5, toA: 30, source: 'glass-sheet-2008', status: 'read' },
  { kinds: ['glass-agc'], multiple: 1.1, minS: 14400, maxS: null, source: 'sae-j554-memory', status: 'from memory' },
  { kinds: ['glass-agc'], multiple: 1.35, minS: null, maxS: 3600, source: 'sae-j554-memory', status: 'from memory' },
]

/** Colours of blade, maxi and torpedo fuses. */
export const fuseColourRows: readonly FuseColourRow[] = [
  { kinds: ['blade', 'mini-blade'], ratingA: 0.5, colour: 'dark blue', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 1, colour: 'black', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 2, colour: 'grey', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 3, colour: 'violet', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 4, colour: 'pink', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 5, colour: 'tan', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 7.5, colour: 'brown', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 10, colour: 'red', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 15, colour: 'blue', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 20, colour: 'yellow', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 25, colour: 'clear/white', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 30, colour: 'green', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 35, colour: 'blue-green', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['blade', 'mini-blade'], ratingA: 40, colour: 'orange', source: 'fuse-colour-pages', status: 'read' },
  { kinds: ['maxi-blade'], ratingA: 20, colour: 'yellow', source: 'din72581-3-extract', status: 'read' },
  { kinds: ['maxi-blade'], ratingA: 30, colour: 'light green', source: 'din72581-3-extract', status: 'read' },
  { kinds: ['maxi-blade'], ratingA: 40, colour: 'orange', source: 'din72581-3-extract', status: 'read' },
  { kinds: ['maxi-blade'], ratingA: 50, colour: 'red', source: 'din72581-3-extract', status: 'read' },
  { kinds: ['maxi-blade'], ratingA: 60, colour: 'light blue', source: 'din72581-3-extract', status: 'read' },
  { kinds: ['maxi-blade'], ratingA: 70, colour: 'brown', source: 'din72581-3-extract', status: 'read' },
  { kinds: ['maxi-blade'], ratingA: 80, colour: 'clear/white', source: 'din72581-3-extract', status: 'read' },
  { kinds: ['torpedo'], ratingA: 5, colour: 'yellow', source: 'fuse-article-2007', status: 'read' },
  { kinds: ['torpedo'], ratingA: 8, colour: 'white', source: 'fuse-article-2007', status: 'read' },
  { kinds: ['torpedo'], ratingA: 16, colour: 'red', source: 'fuse-article-2007', status: 'read' },
  { kinds: ['torpedo'], ratingA: 25, colour: 'blue', source: 'fuse-article-2007', status: 'read' },
]

/** British glass and ceramic fuses by the colour of their paper: printed = 2 x carried in every row. */
export const britishFuseRows: readonly BritishFuseRow[] = [
  { colour: 'blue', printedA: 3, continuousA: 1.5, atOnceA: 3.5, source: 'british-fuse-article', status: 'read' },
  { colour: 'yellow', printedA: 4.5, continuousA: 2.25, atOnceA: 5, source: 'british-fuse-article', status: 'read' },
  { colour: 'red on yellow', printedA: 5, continuousA: 2.5, atOnceA: 6, source: 'british-fuse-article', status: 'read' },
  { colour: 'green', printedA: 6, continuousA: 3, atOnceA: 7, source: 'british-fuse-article', status: 'read' },
  { colour: 'nut brown', printedA: 8, continuousA: 4, atOnceA: 10, source: 'british-fuse-article', status: 'read' },
  { colour: 'red on green', printedA: 10, continuousA: 5, atOnceA: 12, source: 'british-fuse-article', status: 'read' },
  { colour: 'green on black', printedA: 10, continuousA: 5, atOnceA: 12, source: 'british-fuse-article', status: 'read' },
  { colour: 'red on brown', printedA: 12, continuousA: 6, atOnceA: 14, source: 'british-fuse-article', status: 'read' },
  { colour: 'light brown', printedA: 15, continuousA: 7.5, atOnceA: 18, source: 'british-fuse-article', status: 'read' },
  { colour: 'pink', printedA: 25, continuousA: 12.5, atOnceA: 30, source: 'british-fuse-article', status: 'read' },
  { colour: 'white', printedA: 35, continuousA: 17.5, atOnceA: 40, source: 'british-fuse-article', status: 'read', note: '35 A carrying 17.5 A was read on a second page' },
  { colour: 'purple on yellow', printedA: 50, continuousA: 25, atOnceA: 60, source: 'british-fuse-article', status: 'read' },
  { colour: 'yellow on red', printedA: 60, continuousA: 30, atOnceA: 75, source: 'british-fuse-article', status: 'read' },
]

/** An old fuse maker's catalogue, as a club quotes it. */
export const britishToAmericanRows: readonly BritishToAmericanRow[] = [
  { britishA: 50, americanA: 30, source: 'fuse-catalogue-quote', status: 'read' },
  { britishA: 35, americanA: 25, source: 'fuse-catalogue-quote', status: 'read', note: 'half of 35 A is 17.5 A: another club page recommends 20 A' },
  { britishA: 30, americanA: 20, source: 'fuse-catalogue-quote', status: 'read' },
  { britishA: 25, americanA: 15, source: 'fuse-catalogue-quote', status: 'read' },
  { britishA: 20, americanA: 10, source: 'fuse-catalogue-quote', status: 'read' },
  { britishA: 10, americanA: 7, source: 'fuse-catalogue-quote', status: 'read' },
  { britishA: 5, americanA: 3, source: 'fuse-catalogue-quote', status: 'read' },
]

/** How far a fuse is loaded for ever. */
export const fuseLoadingRows: readonly FuseLoadingRow[] = [
  { basis: 'maker glossary, 25 C', share: 0.8, source: 'fuse-glossary', status: 'read' },
  { basis: 'UL/CSA type', share: 0.75, source: 'fuse-introduction', status: 'read' },
  { basis: 'IEC type', share: 1, source: 'fuse-introduction', status: 'read' },
]

/** AC 43.13-1B Table 11-3, direct current. */
export const wireProtectorRows: readonly WireProtectorRow[] = [
  { awg: '22', breakerA: 5, fuseA: 5, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
  { awg: '20', breakerA: 7.5, fuseA: 5, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
  { awg: '18', breakerA: 10, fuseA: 10, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
  { awg: '16', breakerA: 15, fuseA: 10, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
  { awg: '14', breakerA: 20, fuseA: 15, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
  { awg: '12', breakerA: 30, fuseA: 20, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
  { awg: '10', breakerA: 40, fuseA: 30, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
  { awg: '8', breakerA: 50, fuseA: 50, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
  { awg: '6', breakerA: 80, fuseA: 70, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
  { awg: '4', breakerA: 100, fuseA: 70, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
  { awg: '2', breakerA: 125, fuseA: 100, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
  { awg: '1', breakerA: null, fuseA: 150, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
  { awg: '0', breakerA: null, fuseA: 150, source: 'ac43-13-1b-11-3', status: 'mixed', note: 'the copy lists 11 breakers for 13 wires: that sizes 1 and 0 have none is from memory' },
]

/** Largest drops of maxi fuses, DIN 72581-3 form E; of no other kind were any found. */
export const fuseDropRows: readonly FuseDropRow[] = [
  { kind: 'maxi-blade', fromA: 20, toA: 20, maxDropMv: 125, source: 'din72581-3-extract', status: 'read' },
  { kind: 'maxi-blade', fromA: 30, toA: 80, maxDropMv: 100, source: 'din72581-3-extract', status: 'read', note: 'printed for ratings above 20 A' },
]
