import type { Sourced } from './sources.ts'

/** Whose letters: IEC 60757, the older German (continental), or British BS AU 7. American practice has words, no letters. */
export type LetterConvention = 'iec' | 'german' | 'british'

/** Letters for one colour (or for green-and-yellow, a pair); `readOnly` letters are read and never written. */
export interface ColourLetterRow extends Sourced {
  readonly letters: string
  readonly colours: readonly string[]
  readonly readOnly?: boolean
}

/** An IEC 60757 code with its German word, the code it replaced, an example of a RAL colour and its digit on a resistor. */
export interface IecColourRow extends ColourLetterRow {
  readonly german: string
  readonly oldGerman: string | null
  readonly ral: number | null
  readonly digit: number | null
}

/** How letters are put together in a convention. */
export interface ColourRuleRow extends Sourced {
  readonly convention: LetterConvention
  readonly rule: string
  readonly example?: string
}

export type ColourPractice =
  | 'German' | 'British cars' | 'British 1950s' | 'British motorcycles' | 'American trailers' | 'American vehicles'

/** What a wire of this colour is for in one practice: letters as printed (null: words only), and when it is live. */
export interface ColourUseRow extends Sourced {
  readonly practice: ColourPractice
  readonly letters: string | null
  readonly base: string
  readonly tracers: readonly string[]
  readonly use: string
  readonly liveWhen?: string
  readonly terminal?: string
  /** Sources disagree on the side or the use. */
  readonly disputed?: boolean
}

/** Two practices or sources that mean different things: the base colours and the letters it is about, and what to do. */
export interface ColourConflictRow extends Sourced {
  readonly item: string
  readonly one: string
  readonly other: string
  readonly advice: string
  readonly colours: readonly string[]
  readonly letters: readonly string[]
}

/** An sRGB value for drawing a wire, legible on white and on dark ground. */
export interface ScreenColourRow extends Sourced {
  readonly colour: string
  readonly hex: string
  readonly use: string
}

/** IEC 60757 in its own order. */
export const iecColourRows: readonly IecColourRow[] = [
  { letters: 'BK', colours: ['black'], german: 'schwarz', oldGerman: 'sw', ral: 9005, digit: 0, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'BN', colours: ['brown'], german: 'braun', oldGerman: 'br', ral: 8003, digit: 1, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'RD', colours: ['red'], german: 'rot', oldGerman: 'rt', ral: 3000, digit: 2, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'OG', colours: ['orange'], german: 'orange', oldGerman: 'or', ral: 2003, digit: 3, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'YE', colours: ['yellow'], german: 'gelb', oldGerman: 'ge', ral: 1021, digit: 4, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'GN', colours: ['green'], german: 'grün', oldGerman: 'gn', ral: 6018, digit: 5, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'BU', colours: ['blue'], german: 'blau', oldGerman: 'bl', ral: 5015, digit: 6, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'VT', colours: ['violet'], german: 'violett', oldGerman: 'vi', ral: 4005, digit: 7, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'GY', colours: ['grey'], german: 'grau', oldGerman: 'gr', ral: 7000, digit: 8, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'WH', colours: ['white'], german: 'weiß', oldGerman: 'ws', ral: 1013, digit: 9, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'PK', colours: ['pink'], german: 'rosa', oldGerman: 'rs', ral: 3015, digit: null, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'TQ', colours: ['turquoise'], german: 'türkis', oldGerman: 'tk', ral: 6027, digit: null, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'GNYE', colours: ['green', 'yellow'], german: 'grün-gelb', oldGerman: 'gnge', ral: null, digit: null, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'GD', colours: ['gold'], german: 'gold', oldGerman: null, ral: null, digit: null, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'SR', colours: ['silver'], german: 'silber', oldGerman: null, ral: null, digit: null, source: 'wikipedia-farb-kurzzeichen', status: 'read' },
]

/** Abbreviations on German diagrams. */
export const germanColourRows: readonly ColourLetterRow[] = [
  { letters: 'sw', colours: ['black'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'br', colours: ['brown'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'rt', colours: ['red'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'ro', colours: ['red'], source: 'din72551-list', status: 'read', note: 'variant spelling of rt' },
  { letters: 'or', colours: ['orange'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'ge', colours: ['yellow'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'gn', colours: ['green'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'gr', colours: ['grey'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'bl', colours: ['blue'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'hb', colours: ['light blue'], source: 'din72551-list', status: 'read' },
  { letters: 'vi', colours: ['violet'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'li', colours: ['violet'], source: 'din72551-list', status: 'read', note: 'lilac' },
  { letters: 'ws', colours: ['white'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'rs', colours: ['pink'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'tk', colours: ['turquoise'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'gnge', colours: ['green', 'yellow'], source: 'wikipedia-farb-kurzzeichen', status: 'read' },
  { letters: 'dbl', colours: ['dark blue'], source: 'common-practice', status: 'common practice' },
  { letters: 'hgn', colours: ['light green'], source: 'common-practice', status: 'common practice' },
  { letters: 'nf', colours: ['natural'], source: 'common-practice', status: 'common practice' },
  { letters: 'el', colours: ['ivory'], source: 'common-practice', status: 'common practice' },
]

/** BS AU 7, cars and motorcycles. */
export const britishColourRows: readonly ColourLetterRow[] = [
  { letters: 'B', colours: ['black'], source: 'bs-au7-letters', status: 'read' },
  { letters: 'U', colours: ['blue'], source: 'bs-au7-letters', status: 'read' },
  { letters: 'N', colours: ['brown'], source: 'bs-au7-letters', status: 'read' },
  { letters: 'R', colours: ['red'], source: 'bs-au7-letters', status: 'read' },
  { letters: 'P', colours: ['violet'], source: 'bs-au7-letters', status: 'read', note: 'purple in the trade' },
  { letters: 'G', colours: ['green'], source: 'bs-au7-letters', status: 'read' },
  { letters: 'S', colours: ['grey'], source: 'bs-au7-letters', status: 'read', note: 'slate in the trade' },
  { letters: 'W', colours: ['white'], source: 'bs-au7-letters', status: 'read' },
  { letters: 'Y', colours: ['yellow'], source: 'british-motorcycle-colours', status: 'read' },
  { letters: 'LG', colours: ['light green'], source: 'british-motorcycle-colours', status: 'read' },
  { letters: 'L', colours: ['light green'], readOnly: true, source: 'british-motorcycle-colours', status: 'read', note: 'in some lists, for LG' },
  { letters: 'K', colours: ['pink'], source: 'bs-au7-letters-memory', status: 'from memory' },
  { letters: 'O', colours: ['orange'], source: 'bs-au7-letters-memory', status: 'from memory' },
]

/** How letters are put together. */
export const colourRuleRows: readonly ColourRuleRow[] = [
  { convention: 'iec', rule: 'combination of colours on one item: codes joined without separator, in table order', example: 'RDBU = red and blue', source: 'iec60757-preview', status: 'read' },
  { convention: 'iec', rule: 'GN and YE only combined as GNYE for the purposes of IEC 60445', example: 'GNYE', source: 'iec60757-preview', status: 'read' },
  { convention: 'iec', rule: 'several items: codes separated by +', example: 'BK+BK+BN+BU+GNYE', source: 'gost-28763', status: 'read' },
  { convention: 'german', rule: 'older German codes sw br rt or ge gn bl vi gr ws rs tk were replaced by the IEC codes in DIN IEC 757:1986', example: 'rt -> RD', source: 'din-iec-757-preview', status: 'read' },
  { convention: 'british', rule: 'first letter base, second letter tracer', example: 'WG is white with green tracer', source: 'bs-au7-letters', status: 'read' },
  { convention: 'british', rule: 'single colour = feed; same colour with tracer = switch cable after the switch', source: 'british-1950s-article', status: 'read' },
  { convention: 'british', rule: 'a black tracer marks a component switched on its earth side', source: 'british-1950s-article', status: 'read' },
]

/** Colour and use. A colour is a hint, never proof: cables fade, are replaced and used again. */
export const colourUseRows: readonly ColourUseRow[] = [
  { practice: 'German', letters: 'rt', base: 'red', tracers: [], use: 'always live (dynamo, ignition and light switch feeds, everything straight from 30)', terminal: '30', source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'rt', base: 'red', tracers: [], use: 'always live', terminal: '30', source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'sw', base: 'black', tracers: [], use: 'switched live from the ignition switch; ignition in general', terminal: '15', source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'sw', base: 'black', tracers: [], use: 'battery to starter cable (older list), ignition to light switch', terminal: '30/15', source: 'din72551-list', status: 'read', note: 'so a heavy black cable at the battery is NOT switched' },
  { practice: 'German', letters: 'br', base: 'brown', tracers: [], use: 'earth', terminal: '31', source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'br', base: 'brown', tracers: [], use: 'earth', terminal: '31', source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'sw/ws', base: 'black', tracers: ['white'], use: 'turn lamps left', terminal: 'L', source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'sw/gn', base: 'black', tracers: ['green'], use: 'turn lamps right', terminal: 'R', source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'sw/ws', base: 'black', tracers: ['white'], use: 'turn lamps left', terminal: 'L', source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'sw/gn', base: 'black', tracers: ['green'], use: 'turn lamps right', terminal: 'R', source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'sw/rt', base: 'black', tracers: ['red'], use: 'stop lamps', terminal: '54', source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'sw/ge', base: 'black', tracers: ['yellow'], use: 'horn', terminal: '71', source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'sw/vi', base: 'black', tracers: ['violet'], use: 'wiper', terminal: '53', source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'gn', base: 'green', tracers: [], use: 'coil to contact breaker', terminal: '1', source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'ws', base: 'white', tracers: [], use: 'main beam', terminal: '56a', source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'ge', base: 'yellow', tracers: [], use: 'dipped beam', terminal: '56b', source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'ws', base: 'white', tracers: [], use: 'main beam, left', terminal: '56a', disputed: true, source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'ws/sw', base: 'white', tracers: ['black'], use: 'main beam, right', terminal: '56a', disputed: true, source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'ws', base: 'white', tracers: [], use: 'main beam, right', terminal: '56a', disputed: true, source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'ws/sw', base: 'white', tracers: ['black'], use: 'main beam, left', terminal: '56a', disputed: true, source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'ge', base: 'yellow', tracers: [], use: 'dipped beam, left', terminal: '56b', disputed: true, source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'ge/sw', base: 'yellow', tracers: ['black'], use: 'dipped beam, right', terminal: '56b', disputed: true, source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'ge', base: 'yellow', tracers: [], use: 'dipped beam, right', terminal: '56b', disputed: true, source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'ge/sw', base: 'yellow', tracers: ['black'], use: 'dipped beam, left', terminal: '56b', disputed: true, source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'gr', base: 'grey', tracers: [], use: 'side, tail and number-plate lamps', terminal: '58', source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'gr', base: 'grey', tracers: [], use: 'tail / side lamp right', terminal: '58R', disputed: true, source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'gr/sw', base: 'grey', tracers: ['black'], use: 'side / tail lamp left', terminal: '58L', source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'gr/sw', base: 'grey', tracers: ['black'], use: 'side / tail lamp left', terminal: '58L', source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'gr/rt', base: 'grey', tracers: ['red'], use: 'side lamp right', terminal: '58R', disputed: true, source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'gr/rt', base: 'grey', tracers: ['red'], use: 'instrument lighting', terminal: '58d', disputed: true, source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'hb', base: 'light blue', tracers: [], use: 'pilot and signal lamps', source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'bl/ws', base: 'blue', tracers: ['white'], use: 'main-beam pilot lamp', terminal: '56a', source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'bl/rt', base: 'blue', tracers: ['red'], use: 'charge warning lamp', terminal: '61', source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'bl/sw', base: 'blue', tracers: ['black'], use: 'fuel gauge sender', source: 'post-war-colours', status: 'read' },
  { practice: 'German', letters: 'li', base: 'violet', tracers: [], use: 'tracer / distinguishing colour only', source: 'din72551-list', status: 'read' },
  { practice: 'German', letters: 'sw/ws/gn', base: 'black', tracers: ['white', 'green'], use: 'flasher output to the turn switch', terminal: '49a', source: 'common-practice', status: 'common practice' },
  { practice: 'British cars', letters: 'N', base: 'brown', tracers: [], use: 'main battery feed', liveWhen: 'always, unfused', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'NU', base: 'brown', tracers: ['blue'], use: 'control box (compensated voltage control) to ignition and lighting switch feed', liveWhen: 'always', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'NR', base: 'brown', tracers: ['red'], use: 'starting-aid feed; main feed to double-pole ignition switch', liveWhen: 'always', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'NP', base: 'brown', tracers: ['violet'], use: 'alternator regulator feed', liveWhen: 'always', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'NG', base: 'brown', tracers: ['green'], use: 'dynamo F to control box F', liveWhen: 'generator field', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'NW', base: 'brown', tracers: ['white'], use: 'ammeter to control box; ammeter to main alternator terminal', liveWhen: 'always', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'NY', base: 'brown', tracers: ['yellow'], use: 'dynamo D to control box D and ignition warning lamp', liveWhen: 'generator', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'NB', base: 'brown', tracers: ['black'], use: 'alternator warning lamp, negative side', liveWhen: 'signal', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'NLG', base: 'brown', tracers: ['light green'], use: 'screen wiper motor to switch', liveWhen: 'ignition', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'U', base: 'blue', tracers: [], use: 'lighting switch (head) to dip switch', liveWhen: 'headlamps on', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'UR', base: 'blue', tracers: ['red'], use: 'dip switch to dipped beam', liveWhen: 'dipped beam', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'UW', base: 'blue', tracers: ['white'], use: 'dip switch to main beam and main-beam warning lamp', liveWhen: 'main beam', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'UY', base: 'blue', tracers: ['yellow'], use: 'long-range lamp switch to lamp', liveWhen: 'switched', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'UK', base: 'blue', tracers: ['pink'], use: 'dipped-beam fuse to left headlamp when separately fused', liveWhen: 'dipped beam', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'ULG', base: 'blue', tracers: ['light green'], use: 'screen wiper motor to switch', liveWhen: 'ignition', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'R', base: 'red', tracers: [], use: 'side lamps and rear lamps', liveWhen: 'side lamps on', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'W', base: 'white', tracers: [], use: 'ignition circuits', liveWhen: 'ignition, unfused', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'G', base: 'green', tracers: [], use: 'auxiliary devices fed through the ignition switch', liveWhen: 'ignition, fused', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'P', base: 'violet', tracers: [], use: 'auxiliary devices not fed through the ignition switch', liveWhen: 'always, fused', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'B', base: 'black', tracers: [], use: 'earth', liveWhen: 'earth', source: 'bs-au7-forum', status: 'read' },
  { practice: 'British cars', letters: 'GR', base: 'green', tracers: ['red'], use: 'turn lamps left', liveWhen: 'flasher', source: 'british-loom-description', status: 'read' },
  { practice: 'British cars', letters: 'GW', base: 'green', tracers: ['white'], use: 'turn lamps right', liveWhen: 'flasher', source: 'british-loom-description', status: 'read' },
  { practice: 'British cars', letters: 'GN', base: 'green', tracers: ['brown'], use: 'flasher unit to turn-signal switch', liveWhen: 'flasher', source: 'british-loom-description', status: 'read', note: 'older; LGN on motorcycles' },
  { practice: 'British cars', letters: 'LGN', base: 'light green', tracers: ['brown'], use: 'flasher unit to turn-signal switch', liveWhen: 'flasher', source: 'british-loom-description', status: 'read', note: 'GN on older cars' },
  { practice: 'British cars', letters: 'GP', base: 'green', tracers: ['violet'], use: 'stop-lamp switch to stop lamps', liveWhen: 'brake', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'GB', base: 'green', tracers: ['black'], use: 'fuel gauge to sender', liveWhen: 'signal', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'GU', base: 'green', tracers: ['blue'], use: 'temperature gauge to sender', liveWhen: 'signal', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'GN', base: 'green', tracers: ['brown'], use: 'reversing lamp (later list)', liveWhen: 'reverse', source: 'bs-au7-memory', status: 'from memory', note: 'clashes with the older flasher use' },
  { practice: 'British cars', letters: 'PB', base: 'violet', tracers: ['black'], use: 'horn to horn push or relay', liveWhen: 'horn', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'PW', base: 'violet', tracers: ['white'], use: 'interior lamp to door switch', liveWhen: 'interior', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'PN', base: 'violet', tracers: ['brown'], use: 'horn fuse to horn or relay', liveWhen: 'always, fused', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'WB', base: 'white', tracers: ['black'], use: 'coil CB / - to contact breaker', liveWhen: 'ignition', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'WR', base: 'white', tracers: ['red'], use: 'ignition/starter switch to starter solenoid', liveWhen: 'cranking', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'WN', base: 'white', tracers: ['brown'], use: 'oil-pressure switch to warning lamp', liveWhen: 'signal', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'WY', base: 'white', tracers: ['yellow'], use: 'ballast by-pass / ballast to coil', liveWhen: 'ignition', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'RW', base: 'red', tracers: ['white'], use: 'panel-lamp rheostat to panel lamps', liveWhen: 'side lamps on', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'RB', base: 'red', tracers: ['black'], use: 'side and tail lamps left, separately fused', liveWhen: 'side lamps on', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'RO', base: 'red', tracers: ['orange'], use: 'side and tail lamps right, separately fused', liveWhen: 'side lamps on', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'RG', base: 'red', tracers: ['green'], use: 'lighting switch to side/tail fuse', liveWhen: 'side lamps on', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'S', base: 'grey', tracers: [], use: 'electric window circuits', liveWhen: 'ignition', source: 'bs-au7-memory', status: 'from memory' },
  { practice: 'British cars', letters: 'O', base: 'orange', tracers: [], use: 'screen wiper/washer circuits, fused, later cars', liveWhen: 'ignition, fused', source: 'bs-au7-memory', status: 'from memory', note: 'the forum extract read says: orange only on later cars, green before 1980' },
  { practice: 'British 1950s', letters: null, base: 'brown', tracers: [], use: 'battery circuit: battery or starter switch to ammeter or control box', liveWhen: 'always', source: 'british-1950s-article', status: 'read' },
  { practice: 'British 1950s', letters: null, base: 'yellow', tracers: [], use: 'generator circuit: dynamo terminal to control box and ignition warning lamp', liveWhen: 'generator', source: 'british-1950s-article', status: 'read', note: 'that yellow is one of the seven main colours was read in the article, its circuit on a second page' },
  { practice: 'British 1950s', letters: null, base: 'white', tracers: [], use: 'ignition circuit and items needing the ignition switch, unfused', liveWhen: 'ignition', source: 'british-loom-description', status: 'read' },
  { practice: 'British 1950s', letters: null, base: 'green', tracers: [], use: 'auxiliaries, fed from the ignition switch and fused', liveWhen: 'ignition, fused', source: 'british-loom-description', status: 'read' },
  { practice: 'British 1950s', letters: null, base: 'blue', tracers: [], use: 'headlamp circuit', liveWhen: 'headlamps on', source: 'british-loom-description', status: 'read' },
  { practice: 'British 1950s', letters: null, base: 'red', tracers: [], use: 'side and tail lamp circuit', liveWhen: 'side lamps on', source: 'british-1950s-memory', status: 'from memory' },
  { practice: 'British 1950s', letters: null, base: 'black', tracers: [], use: 'return or earth cables', liveWhen: 'earth', source: 'british-1950s-article', status: 'read' },
  { practice: 'British motorcycles', letters: 'R', base: 'red', tracers: [], use: 'earth side on positive-earth motorcycles', liveWhen: 'earth', source: 'british-motorcycle-memory', status: 'from memory', note: 'most positive-earth machines have no black wires; some later looms use black instead of red' },
  { practice: 'British motorcycles', letters: 'B', base: 'black', tracers: [], use: 'earth on negative-earth motorcycles', liveWhen: 'earth', source: 'british-motorcycle-colours', status: 'read' },
  { practice: 'British motorcycles', letters: 'N', base: 'brown', tracers: [], use: 'stop lamp', liveWhen: 'brake', source: 'british-motorcycle-colours', status: 'read', note: 'differs from cars' },
  { practice: 'British motorcycles', letters: 'NG', base: 'brown', tracers: ['green'], use: 'tail, pilot and instrument lamps', liveWhen: 'side lamps on', source: 'british-motorcycle-colours', status: 'read', note: 'differs from cars' },
  { practice: 'British motorcycles', letters: 'NB', base: 'brown', tracers: ['black'], use: 'horn push to horn', liveWhen: 'horn', source: 'british-motorcycle-colours', status: 'read' },
  { practice: 'British motorcycles', letters: 'NU', base: 'brown', tracers: ['blue'], use: 'battery to ignition switch', liveWhen: 'always', source: 'british-motorcycle-colours', status: 'read' },
  { practice: 'British motorcycles', letters: 'GR', base: 'green', tracers: ['red'], use: 'turn lamp left', liveWhen: 'flasher', source: 'british-motorcycle-colours', status: 'read' },
  { practice: 'British motorcycles', letters: 'GW', base: 'green', tracers: ['white'], use: 'turn lamp right', liveWhen: 'flasher', source: 'british-motorcycle-colours', status: 'read' },
  { practice: 'British motorcycles', letters: 'LGN', base: 'light green', tracers: ['brown'], use: 'flasher unit to turn switch', liveWhen: 'flasher', source: 'british-motorcycle-colours', status: 'read' },
  { practice: 'British motorcycles', letters: 'BW', base: 'black', tracers: ['white'], use: 'contact breaker to coil (twin, timing side; single)', liveWhen: 'ignition', source: 'british-motorcycle-colours', status: 'read' },
  { practice: 'British motorcycles', letters: 'BY', base: 'black', tracers: ['yellow'], use: 'contact breaker to coil (twin, drive side)', liveWhen: 'ignition', source: 'british-motorcycle-colours', status: 'read' },
  { practice: 'British motorcycles', letters: 'G', base: 'green', tracers: [], use: 'dynamo field on magneto machines', liveWhen: 'generator field', source: 'british-motorcycle-colours', status: 'read' },
  { practice: 'American trailers', letters: null, base: 'white', tracers: [], use: 'earth return', source: 'sae-j560-page', status: 'read' },
  { practice: 'American trailers', letters: null, base: 'black', tracers: [], use: 'clearance, side marker and number-plate lamps', source: 'sae-j560-page', status: 'read' },
  { practice: 'American trailers', letters: null, base: 'yellow', tracers: [], use: 'left turn and hazard', source: 'sae-j560-page', status: 'read' },
  { practice: 'American trailers', letters: null, base: 'red', tracers: [], use: 'stop lamps', source: 'sae-j560-page', status: 'read' },
  { practice: 'American trailers', letters: null, base: 'green', tracers: [], use: 'right turn and hazard', source: 'sae-j560-page', status: 'read' },
  { practice: 'American trailers', letters: null, base: 'brown', tracers: [], use: 'tail, clearance and identification lamps', source: 'sae-j560-page', status: 'read' },
  { practice: 'American trailers', letters: null, base: 'blue', tracers: [], use: 'auxiliary', source: 'sae-j560-memory', status: 'from memory' },
  { practice: 'American vehicles', letters: null, base: 'black', tracers: [], use: 'earth', source: 'common-practice', status: 'common practice' },
  { practice: 'American vehicles', letters: null, base: 'red', tracers: [], use: 'always live', source: 'common-practice', status: 'common practice' },
  { practice: 'American vehicles', letters: null, base: 'pink', tracers: [], use: 'ignition or accessory feed, maker dependent', source: 'common-practice', status: 'common practice', note: 'American makers differed; there is no general function code before SAE practice' },
  { practice: 'American vehicles', letters: null, base: 'orange', tracers: [], use: 'ignition or accessory feed, maker dependent', source: 'common-practice', status: 'common practice', note: 'American makers differed; there is no general function code before SAE practice' },
]

/** Where sources or practices collide. */
export const colourConflictRows: readonly ColourConflictRow[] = [
  { item: 'dipped beam side', one: 'ge = left, ge/sw = right (list headed DIN 72551)', other: 'ge = right, ge/sw = left (post-war list)', advice: 'accept both; never derive the side from the colour alone', colours: ['yellow'], letters: [], source: 'post-war-colours', status: 'read' },
  { item: 'main beam side', one: 'ws = left, ws/sw = right (list headed DIN 72551)', other: 'ws = right, ws/sw = left (post-war list)', advice: 'accept both; never derive the side from the colour alone', colours: ['white'], letters: [], source: 'post-war-colours', status: 'read' },
  { item: 'grey/red', one: 'side lamp right (list headed DIN 72551)', other: 'instrument lighting (post-war list)', advice: 'ask the user', colours: ['grey'], letters: [], source: 'post-war-colours', status: 'read' },
  { item: 'heavy black at the battery', one: 'battery to starter (list headed DIN 72551)', other: 'black = switched live (post-war list)', advice: 'use cross-section and end device', colours: ['black'], letters: [], source: 'din72551-list', status: 'read' },
  { item: 'letter gr / GR', one: 'German gr = grey', other: 'British GR = green with red tracer', advice: 'never mix code sets in one import', colours: [], letters: ['gr'], source: 'common-practice', status: 'common practice' },
  { item: 'letter br / BR', one: 'German br = brown', other: 'British BR = black with red tracer', advice: 'never mix code sets in one import', colours: [], letters: ['br'], source: 'common-practice', status: 'common practice' },
  { item: 'letter G', one: 'British G = green', other: 'German trade lists: ge yellow, gn green, gr grey', advice: 'never mix code sets in one import', colours: [], letters: ['g', 'ge', 'gn', 'gr'], source: 'common-practice', status: 'common practice' },
  { item: 'black cable', one: 'German: switched live', other: 'British and American: earth', advice: 'safety: show the convention next to the colour', colours: ['black'], letters: [], source: 'bs-au7-letters', status: 'read' },
  { item: 'red cable', one: 'German: always live', other: 'British: side and tail lamps; on older positive-earth British motorcycles red is the earth side', advice: 'safety: show the convention next to the colour', colours: ['red'], letters: [], source: 'british-motorcycle-colours', status: 'read' },
  { item: 'brown cable', one: 'German: earth', other: 'British: battery main feed, always live', advice: 'safety: show the convention next to the colour', colours: ['brown'], letters: [], source: 'bs-au7-letters', status: 'read' },
]

/** Colours for the screen, a choice and not a standard. */
export const screenColourRows: readonly ScreenColourRow[] = [
  { colour: 'black', hex: '#202020', use: 'line', source: 'common-practice', status: 'common practice' },
  { colour: 'brown', hex: '#7B4A21', use: 'line', source: 'common-practice', status: 'common practice' },
  { colour: 'red', hex: '#D42A2A', use: 'line', source: 'common-practice', status: 'common practice' },
  { colour: 'orange', hex: '#E8761A', use: 'line', source: 'common-practice', status: 'common practice' },
  { colour: 'yellow', hex: '#E6C200', use: 'line, draw dark outline #6B5A00 on white', source: 'common-practice', status: 'common practice' },
  { colour: 'green', hex: '#1F8A3B', use: 'line', source: 'common-practice', status: 'common practice' },
  { colour: 'light green', hex: '#7CC242', use: 'line', source: 'common-practice', status: 'common practice' },
  { colour: 'blue', hex: '#1F5FBF', use: 'line', source: 'common-practice', status: 'common practice' },
  { colour: 'light blue', hex: '#4FA3D9', use: 'line', source: 'common-practice', status: 'common practice' },
  { colour: 'violet', hex: '#7A3E9D', use: 'line (also purple, lilac)', source: 'common-practice', status: 'common practice' },
  { colour: 'grey', hex: '#8A8A8A', use: 'line (also slate)', source: 'common-practice', status: 'common practice' },
  { colour: 'white', hex: '#F5F5F5', use: 'line, draw outline #707070', source: 'common-practice', status: 'common practice' },
  { colour: 'pink', hex: '#E58BA9', use: 'line', source: 'common-practice', status: 'common practice' },
  { colour: 'turquoise', hex: '#2AA79B', use: 'line', source: 'common-practice', status: 'common practice' },
  { colour: 'ivory', hex: '#E8DCB5', use: 'line, draw outline #8A7F55', source: 'common-practice', status: 'common practice' },
  { colour: 'gold', hex: '#B8922E', use: 'line', source: 'common-practice', status: 'common practice' },
  { colour: 'silver', hex: '#B5B9BD', use: 'line, draw outline #6F7478', source: 'common-practice', status: 'common practice' },
]
