/**
 * How a figure is known: read in a public copy, recalled and not read again, trade use without a named publication, or
 * a row of which some fields are one and some another (its note says which).
 */
export type Status = 'read' | 'from memory' | 'common practice' | 'mixed'

/** Where figures come from, in words that stand without a link. */
export interface Source {
  readonly title: string
  readonly status: Status
  readonly usedFor: string
}

/** What every row of every table carries: the id of its source, how it is known, and a note where one is due. */
export interface Sourced {
  readonly source: SourceId
  readonly status: Status
  readonly note?: string
}

export type SourceId = keyof typeof sources

/** Every source by its id. The same list, for people, is docs/sources.md. */
export const sources = {
  'iso6722-sheets': { title: "A cable maker's data sheets for cables declared to ISO 6722: thick and thin wall, PVC and cross-linked. The text of ISO 6722 was not read", status: 'read', usedFor: 'metric sizes, resistance, strands, outside diameter, temperature ratings' },
  'iso6722-memory': { title: 'ISO 6722-1:2011, table of conductor sizes', status: 'from memory', usedFor: 'metric sizes that the sheets leave out, and resistances that they cut short' },
  'iec60228-extract': { title: 'An electrical engineering page quoting DIN VDE 0295 / IEC 60228, agreeing with a reproduction of GB/T 3956. The text of IEC 60228 was not read', status: 'read', usedFor: 'general flexible and stranded conductors, and the small ones below 0.5 mm2' },
  'jis-av-sheet': { title: "A cable maker's data sheet for AV cable to JIS C 3406; resistances and diameters agree with a second maker's page", status: 'read', usedFor: 'Japanese vehicle cable: area, strands, resistance, diameter, current limit' },
  'jis-av-page': { title: "A second cable maker's page on AV cable to JIS C 3406", status: 'read', usedFor: 'temperature limit of AV cable' },
  'british-cable-table': { title: "A tow-bar fitter's cable table, British PVC cable by strands", status: 'read', usedFor: 'British metric strands: area, ohms a metre, continuous amps' },
  'british-cable-memory': { title: 'British vehicle-cable trade tables, PVC cable of the BS 6862 kind', status: 'from memory', usedFor: 'larger British metric strands: area, continuous amps' },
  'imperial-strands': { title: 'Arithmetic from the stranding, n x pi/4 x (0.012 in)^2; the size names are trade use; resistance 0.0172 x 1.08 / area', status: 'common practice', usedFor: 'British imperial strands: area, assumed resistance' },
  'astm-b258': { title: 'Wikipedia, "American wire gauge": diameter 0.127 mm x 92^((36 - n)/39), after ASTM B258. The text of ASTM B258 was not read', status: 'read', usedFor: 'diameter and area of an AWG size' },
  'hyperphysics-wire': { title: 'HyperPhysics, wire gauge table, figures credited there to an electric-circuits textbook, 2nd edition', status: 'read', usedFor: 'ohms per 1000 ft of solid copper by AWG' },
  'sae-area-table': { title: "A marine wire seller's ampacity table with AWG and SAE circular-mil columns; two sizes agree with a chandler's table. SAE J1127 and J1128 were not read", status: 'read', usedFor: 'least copper area of SAE gauges' },
  'sae-j1128-sheets': { title: "Cable makers' data sheets declared to SAE J1128, GPT, TWP and GXL. SAE J1128 was not read", status: 'read', usedFor: 'outside diameter and temperature rating of SAE cables' },
  'wire-type-pages': { title: "An owners' forum page and a wire seller's page on wire types", status: 'read', usedFor: 'temperature rating of SXL, GXL and TXL cable' },
  'ac43-13-1b': { title: 'FAA AC 43.13-1B CHG 1 (2001), chapter 11, Table 11-9 and p. 11-22', status: 'read', usedFor: 'aircraft copper wire by AWG: largest resistance, area; zero-resistance temperature' },
  'cable-class-spec': { title: 'A bilingual cable specification with temperature classes A to H; the same as the ISO 6722 classes as remembered', status: 'read', usedFor: 'temperature classes of vehicle cable' },
  'iee-regs-memory': { title: 'IEE Wiring Regulations, rubber and PVC cable classes, with general practice', status: 'from memory', usedFor: 'working limit of old rubber, cotton and general PVC insulation' },
  'copper-org-2001': { title: 'copper.org, Innovations, August 2001, table of the physical properties of copper', status: 'read', usedFor: 'copper constants' },
  'iec60028-memory': { title: 'IEC 60028', status: 'from memory', usedFor: 'temperature coefficient of copper' },
  'nec-ch9-table8': { title: 'NEC chapter 9 Table 8, its note, as quoted on a table page', status: 'read', usedFor: 'temperature coefficient referred to 75 C' },
  'iec60364-5-54-quote': { title: 'IEC 60364-5-54 constants as quoted in a document on short-time cable heating', status: 'read', usedFor: 'volumetric heat capacity of copper' },
  'abyc-sizing': { title: "A chandler's cable-sizing document (formula of the ABYC kind)", status: 'read', usedFor: 'mil-foot constant used for boats' },
  'iec60287-memory': { title: 'IEC 60287-2-1', status: 'from memory', usedFor: 'thermal resistivity of insulation' },
  'iec60853-memory': { title: 'IEC 60853-2', status: 'from memory', usedFor: 'heat capacity of insulation' },
  'directive-97-24': { title: 'Directive 97/24/EC, annex 15, data sheet of lamp category P21/5W', status: 'read', usedFor: 'P21/5W at 6, 12 and 24 V; test volts of signalling lamps' },
  'wikipedia-h1': { title: 'Wikipedia (German), "H1-Lampe", quoting UN Regulation 37', status: 'read', usedFor: 'H1 at 12 V' },
  'r37-memory': { title: 'UN Regulation 37, category sheets of revision 7/8', status: 'from memory', usedFor: 'most lamp categories' },
  'en60809-h4': { title: 'EN 60809, data sheet H4 (December 1996), as quoted on a page about lighting', status: 'read', usedFor: 'H4 at 12 V' },
  'wikipedia-blinkrelais': { title: 'Wikipedia (German), "Blinkrelais"', status: 'read', usedFor: 'turn lamps of very old vehicles' },
  'sae-j573d': { title: 'SAE J573d (December 1968), opening of table 1, incorporated by reference in US law', status: 'read', usedFor: 'American lamps 51 and 55' },
  'sae-j573-memory': { title: 'SAE J573, lamp bulb tables', status: 'from memory', usedFor: 'most American lamp numbers' },
  'lamp-sheet-1003': { title: "A lamp maker's data sheet, trade number 1003, 2016", status: 'read', usedFor: 'American lamp 1003' },
  'sealed-beam-forum': { title: "An owners' forum page on the history of American sealed-beam numbers", status: 'read', usedFor: 'American sealed beams' },
  'british-lamp-memory': { title: 'Lists of British lamp numbers', status: 'from memory', usedFor: 'British lamp numbers' },
  'wikipedia-rerating': { title: 'Wikipedia, "Lamp rerating", citing the Standard Handbook for Electrical Engineers, 11th edition, 1978', status: 'read', usedFor: 'exponents of lamp current, power, light and life' },
  'lamp-technology-site': { title: 'A site on lamp technology, pages on voltage variation and on starting', status: 'read', usedFor: 'light and life by voltage, inrush' },
  'ies-memory': { title: 'IES Lighting Handbook', status: 'from memory', usedFor: 'exponents of gas-filled and vacuum lamps' },
  'wikipedia-incandescent': { title: 'Wikipedia, "Incandescent light bulb", current and resistance, as quoted in a discussion', status: 'read', usedFor: 'hot against cold resistance, time to steady current' },
  'installation-guide-fr': { title: 'An electrical installation guide (French)', status: 'read', usedFor: 'range of inrush' },
  'inrush-white-paper': { title: "A semiconductor maker's white-paper abstract", status: 'read', usedFor: 'inrush in the first milliseconds' },
  'tungsten-memory': { title: 'Physical Review 28 (1926) and the CRC Handbook', status: 'from memory', usedFor: 'resistivity of tungsten' },
  'filament-notes': { title: "A lamp maker's filament design notes", status: 'read', usedFor: 'lumens from candlepower' },
  'handbook-din72552': { title: 'An automotive handbook, 3rd edition, extract of DIN 72552', status: 'read', usedFor: 'DIN terminal markings' },
  'handbook-din72552-memory': { title: 'An automotive handbook, extract of DIN 72552', status: 'from memory', usedFor: 'DIN terminal markings and relay contacts' },
  'wikipedia-din72552': { title: 'Wikipedia, "DIN 72552"', status: 'read', usedFor: 'DIN terminal markings with older names' },
  'din72552-document': { title: 'A document "Terminal designations - DIN 72552"', status: 'read', usedFor: 'DIN terminal markings' },
  'truck-club-markings': { title: "A truck club's table of old and new terminal markings", status: 'read', usedFor: 'older markings and their present names' },
  'technical-tables-din72552': { title: "A maker's technical tables, common terminal markings of DIN 72552", status: 'read', usedFor: 'DIN terminal markings' },
  'parts-seller-markings': { title: "A parts seller's list of terminal markings", status: 'read', usedFor: 'DIN terminal markings' },
  'mechatronics-textbook': { title: 'A vehicle-mechatronics textbook, part 2, as quoted on a page about cable colours', status: 'read', usedFor: 'DIN terminal markings of lamps' },
  'motorcycle-markings': { title: "A motorcycle owners' list of DIN 72552 markings", status: 'read', usedFor: 'DIN terminal markings of switches and horn' },
  'relay-catalogue-2010': { title: 'A component-maker catalogue 2010/2011, p. 76, relay terminal cross-reference', status: 'read', usedFor: 'relay winding and micro relay numbers' },
  'relay-caption': { title: 'A magazine photo caption on relay terminals', status: 'read', usedFor: 'mini relay contacts' },
  'ignition-switch-memory': { title: 'Later ignition-switch practice', status: 'from memory', usedFor: 'marking X' },
  'control-box-page': { title: "An owners' page on dynamo and control-box terminals", status: 'read', usedFor: 'British control-box letters' },
  'tm-5-3810-300-24': { title: 'US Army TM 5-3810-300-24&P-3, charging regulator and p. 330', status: 'read', usedFor: 'American regulator letters, A and B circuits, polarising' },
  'trailer-12n-page': { title: "A trailer parts seller's page on the UK 7-pin 12N socket; markings from memory of ISO 1724", status: 'read', usedFor: '7-pin trailer socket' },
  'battery-maker-table': { title: "A battery maker's table of charge, rest volts and specific gravity at 80 F, with hydrometer correction", status: 'read', usedFor: 'rest volts by charge, gravity, hydrometer correction' },
  'tm-5-3805-262-20': { title: 'US Army TM 5-3805-262-20, p. 5-142, battery voltage test', status: 'read', usedFor: 'rest volts by charge' },
  'gravity-article': { title: 'An article on the specific gravity of lead-acid batteries', status: 'read', usedFor: 'rest volts from gravity' },
  'technician-study-guide': { title: "A technicians' study guide, battery capacity testing", status: 'read', usedFor: 'battery definitions and load test' },
  'tm-9-6140-200-14': { title: 'US Army TM 9-6140-200-14, batteries, pp. 2-4 and 4-13', status: 'read', usedFor: 'spread of cells, discharge limit' },
  'battery-service-module': { title: "A technicians' training module on battery service", status: 'read', usedFor: 'key-off drain, drain over the case' },
  'tm-5-3805-260-24': { title: 'US Army TM 5-3805-260-24, electrical system, p. 146', status: 'read', usedFor: 'load tests at 6 and 12 V' },
  'tm-5-3805-263-14': { title: 'US Army TM 5-3805-263-14&P-2, electrical system, p. 85', status: 'read', usedFor: 'load test a cell' },
  'bci-memory': { title: 'BCI battery load-test table by temperature', status: 'from memory', usedFor: 'load test by temperature' },
  'openstax-starter': { title: 'OpenStax College Physics, starter-motor problem with published answers', status: 'read', usedFor: 'textbook resistances of battery and starter' },
  'university-physics': { title: 'University physics textbook problems on batteries and starters', status: 'read', usedFor: 'textbook resistances of battery and starter' },
  'tm-5-3820-233-35': { title: 'US Army TM 5-3820-233-35/1, generator regulator specification', status: 'read', usedFor: 'regulator and cut-out bands at 12 V' },
  'dynamo-regulator-maker': { title: 'A maker of replacement 6 V dynamo regulators', status: 'read', usedFor: 'regulated volts at 6 V' },
  'service-sheet-memory': { title: 'Component-maker service sheets of the 1950s', status: 'from memory', usedFor: 'open-circuit regulator setting' },
  'tm-9-8000': { title: 'US Army TM 9-8000, Principles of Automotive Vehicles, cut-out relay', status: 'read', usedFor: 'action of the cut-out' },
  'tm-9-8000-lighting': { title: 'US Army TM 9-8000, Principles of Automotive Vehicles, lighting page', status: 'read', usedFor: 'hours a battery feeds its lamps' },
  'navedtra-14050': { title: 'US Navy NAVEDTRA 14050, Construction Mechanic (Advanced), p. 94; its views A to C are figures that were not seen', status: 'read', usedFor: 'drops in the starting circuit' },
  'tm-5-3820-256-24': { title: 'US Army TM 5-3820-256-24-4, cranking-circuit voltage drops, pp. 7-9', status: 'read', usedFor: 'drops in the starting circuit' },
  'tm-10-3930-671-24': { title: 'US Army TM 10-3930-671-24, volt drop tests', status: 'read', usedFor: 'drops in the starting circuit, cranking time' },
  'tm-5-2420-230-24': { title: 'US Army TM 5-2420-230-24-2, p. 13-33, starter control circuit', status: 'read', usedFor: 'drop of the starter control circuit' },
  'sae-j564': { title: 'SAE J564 (1990) as summarised by a test laboratory', status: 'read', usedFor: 'dip switch, test volts' },
  'sae-j249': { title: 'SAE J249 as summarised by a test laboratory', status: 'read', usedFor: 'stop-lamp switch' },
  'sae-j945': { title: 'SAE J945 as summarised by a test laboratory', status: 'read', usedFor: 'hazard flasher' },
  'sae-drop-manual': { title: 'A repair-manual publisher quoting the largest drops that SAE recommends', status: 'read', usedFor: 'drops of cables, joints and contacts' },
  'nhtsa-01931': { title: 'NHTSA interpretation 01931ztv (2002), FMVSS 108 and SAE J945 of February 1966', status: 'read', usedFor: 'flash rate, how it is measured' },
  'nhtsa-91-7-29': { title: 'NHTSA interpretation nht91-7.29 (1991), FMVSS 108 S5.5.6 and SAE J588e', status: 'read', usedFor: 'showing a dead turn lamp' },
  'nhtsa-91-7-6': { title: 'NHTSA interpretation nht91-7.6 (1991)', status: 'read', usedFor: 'electronic flashers with a dead lamp' },
  'stvzo': { title: 'German StVZO 2012, sections 53 and 54', status: 'read', usedFor: 'flash rate in Germany' },
  'swiss-vts': { title: 'Swiss ordinance VTS, SR 741.41, art. 79', status: 'read', usedFor: 'flash rate in Switzerland' },
  'uk-inspection-manual': { title: 'UK inspection manual, section 1.5, direction indicators', status: 'read', usedFor: 'flash rate in the UK' },
  'r48-memory': { title: 'UN Regulation 48', status: 'from memory', usedFor: 'flash rate' },
  'cfr33-183-425': { title: '33 CFR 183.425 Table 5, allowable amperage of conductors on boats, read in a copy of the US regulation; 30 C ambient from a boat-wiring page', status: 'read', usedFor: 'amps of AWG wire by insulation temperature' },
  'cfr33-183-425-memory': { title: '33 CFR 183.425 Table 5, note 1', status: 'from memory', usedFor: 'engine-space factors' },
  'boat-shop-note-1': { title: "A boat-parts shop's document quoting 33 CFR 183.425 Table 5, note 1", status: 'read', usedFor: 'engine-space factor of 105 C cable' },
  'journal-2017': { title: "A parts wholesaler's journal, July 2017, tables 1 and 2 on standard cross-sections and permissible voltage drops", status: 'read', usedFor: 'amps by cross-section, permitted drops at 12 and 24 V' },
  'wire-choice-pages': { title: "Two owners' pages and a small-vehicle page carrying the same lists", status: 'read', usedFor: 'rules of thumb for old vehicles: amps a mm2, wire by current' },
  'british-1950s-article': { title: 'An article on the standardised British cable colours, sizes and identification of the 1950s; its opening was read', status: 'read', usedFor: 'ratings of British imperial cable, British colours of the 1950s' },
  'mil-w-5088l-curve': { title: 'MIL-W-5088L, bundled wire current derating, digitised by a third party; the curve itself was not read', status: 'read', usedFor: 'bundle factor by number of wires and loading' },
  'nec-310-15': { title: "NEC 2014 Table 310.15(B)(3)(a) as reproduced on a cabin builder's page", status: 'read', usedFor: 'bundle factor by number of conductors' },
  'uscg-guideline': { title: 'US Coast Guard Electrical System Compliance Guideline as reprinted in a marine catalogue, p. 212', status: 'read', usedFor: 'bundle factor of AC circuits and of 50 V and more' },
  'bs7671-summary': { title: 'BS 7671:1992 (IEE Wiring Regulations), Tables 4.3 and 4.4, in a summary of the regulations', status: 'read', usedFor: 'ambient and grouping factors of 70 C PVC' },
  'ac43-13-1b-11-68': { title: 'FAA AC 43.13-1B CHG 1 (2001), par. 11-68, examples on pp. 11-26 and 11-27', status: 'read', usedFor: 'points of the aircraft charts' },
  'ac43-13-1b-11-69-memory': { title: 'FAA AC 43.13-1B, par. 11-69, examples', status: 'from memory', usedFor: 'points of the aircraft charts' },
  'ac43-13-1b-11-6-memory': { title: 'FAA AC 43.13-1B, Table 11-6, intermittent column', status: 'from memory', usedFor: 'drops of intermittent loads' },
  'truck-engine-manual-2018': { title: "A truck-engine maker's installation manual, 2018", status: 'read', usedFor: 'drops at 24 V' },
  'abyc-drop-pages': { title: 'ABYC recommendation as quoted on two boat-wiring pages', status: 'read', usedFor: 'drops on boats, critical or not' },
  'chandler-drop-page': { title: "A second chandler's page on cable sizes", status: 'read', usedFor: 'drops on boats' },
  'faa-handbook-copy': { title: 'FAA handbook text as copied on a flight-mechanics page', status: 'read', usedFor: 'drop of an aircraft main feed' },
  'boat-flipbook-2022': { title: "A chandler's catalogue, 2022, p. 52, Table A", status: 'read', usedFor: 'AWG for a 3 % drop at 12 V' },
  'nec-ch9-table8-page': { title: 'NEC chapter 9 Table 8 as reproduced on a table page', status: 'read', usedFor: 'resistance of copper conductors at 75 C' },
  'fuse-wire-page': { title: "An engineer's page of fuse-wire tables", status: 'read', usedFor: "Preece's constants, copper fuse wire" },
  'onderdonk-thread': { title: 'A physics forum thread on fusing current', status: 'read', usedFor: "Onderdonk's equation" },
  'icea-quotation': { title: 'ICEA short-circuit equation as quoted in a forum', status: 'read', usedFor: 'short-time heating of copper' },
  'iec60364-4-43-memory': { title: 'IEC 60364-4-43, Table 43A', status: 'from memory', usedFor: 'rounded k of PVC and cross-linked cable' },
  'fuse-pages': { title: 'A page about vehicle fuses: 110 % holds 100 h; up to 600 s at 135 % for one make of standard blade', status: 'read', usedFor: 'blade fuses at 110 % and 135 %, what their rating means' },
  'iso8820-3-quote': { title: 'ISO 8820-3 as quoted on a page about vehicle cables and fuses. The text of ISO 8820-3 was not read', status: 'read', usedFor: 'blade fuses at 135 %' },
  'iso8820-3-memory': { title: 'ISO 8820-3, operating-time table', status: 'from memory', usedFor: 'blade fuses from 160 % to 600 %' },
  'din72581-3-extract': { title: 'A page about vehicle cables and fuses, extract of DIN 72581-3', status: 'read', usedFor: 'maxi fuses: times, drops, colours' },
  'glass-sheet-2008': { title: "A fuse maker's data sheet on 1/4 x 1 in glass fuses, 2008; an older sheet agrees", status: 'read', usedFor: 'American glass fuses 8AG' },
  'sae-j554-memory': { title: 'SAE J554, American glass fuses of 1/4 x 1 1/4 in', status: 'from memory', usedFor: '110 % and 135 % of AGC fuses' },
  'fuse-colour-pages': { title: "An enthusiasts' wiki and a parts seller's page on fuse colours. The text of ISO 8820-3 was not read", status: 'read', usedFor: 'colours of blade fuses' },
  'fuse-article-2007': { title: 'A copy, 2007, of an encyclopedia article on automotive fuses', status: 'read', usedFor: 'colours of torpedo fuses DIN 72581-1' },
  'british-fuse-article': { title: "An encyclopedia article on automotive fuses as quoted on an owners' mailing list, 2020; an owners' club page confirms 35 A", status: 'read', usedFor: 'three ratings of British fuses' },
  'fuse-catalogue-quote': { title: "An old fuse maker's catalogue as quoted on an owners' club page", status: 'read', usedFor: 'American fuse for a British rating' },
  'fuse-glossary': { title: "A fuse maker's glossary: 80 % at 25 C", status: 'read', usedFor: 'loading of a fuse' },
  'fuse-introduction': { title: "A fuse maker's introduction: UL and CSA 0.75, IEC 1.00", status: 'read', usedFor: 'loading of a fuse' },
  'ac43-13-1b-11-3': { title: 'FAA AC 43.13-1B (1998), Table 11-3, p. 11-15, wire and circuit protector chart', status: 'read', usedFor: 'largest breaker and fuse of an aircraft wire' },
  'wikipedia-farb-kurzzeichen': { title: 'Wikipedia (German), "Farb-Kurzzeichen"', status: 'read', usedFor: 'IEC 60757 letters, older German letters' },
  'iec60757-preview': { title: 'IEC 60757:2021, its preview text', status: 'read', usedFor: 'combining colour letters' },
  'gost-28763': { title: 'GOST 28763-90, identical with IEC 757-83, table', status: 'read', usedFor: 'several items with their colours' },
  'din-iec-757-preview': { title: 'DIN IEC 757:1986, identical with IEC 757:1983, opening of a preview with the conversion table', status: 'read', usedFor: 'old German letters and their IEC codes' },
  'din72551-list': { title: "A cable-colour list headed DIN 72551, reproduced alike on three enthusiasts' pages", status: 'read', usedFor: 'German colours and their uses' },
  'post-war-colours': { title: 'A page on German post-war cable colours, the same list as one quoting a vehicle-mechatronics textbook, part 2', status: 'read', usedFor: 'German colours and their uses' },
  'bs-au7-letters': { title: "BS AU 7 colour letters as reproduced on an owners' club page; its opening was read", status: 'read', usedFor: 'British colour letters' },
  'bs-au7-letters-memory': { title: 'BS AU 7, colour letters', status: 'from memory', usedFor: 'pink and orange' },
  'bs-au7-forum': { title: "BS AU 7a:1983, an extract, and a BS AU 7 colour table reproduced on a UK owners' forum; their openings were read", status: 'read', usedFor: 'British colours and their uses' },
  'bs-au7-memory': { title: 'BS AU 7 and AU 7a, colours and their uses', status: 'from memory', usedFor: 'British colours and their uses' },
  'british-loom-description': { title: 'A description of British loom colours by a parts supplier; its opening was read', status: 'read', usedFor: 'British colours and their uses' },
  'british-1950s-memory': { title: 'British cable colour scheme of the 1950s', status: 'from memory', usedFor: 'red in the 1950s' },
  'british-motorcycle-colours': { title: 'A page on British motorcycle wiring colours; its opening was read', status: 'read', usedFor: 'British colour letters, motorcycles' },
  'british-motorcycle-memory': { title: 'British motorcycle practice', status: 'from memory', usedFor: 'red as the earth side' },
  'sae-j560-page': { title: "SAE J560, standard wiring colours as listed on a trailer technician's page (7-way)", status: 'read', usedFor: 'American trailer colours' },
  'sae-j560-memory': { title: 'SAE J560, standard wiring colours', status: 'from memory', usedFor: 'blue on American trailers' },
  'trouble-shooting-page': { title: 'A trouble-shooting page of a hot-rod site; its opening was read', status: 'read', usedFor: 'poor connections, worn starters' },
  'lamp-trade-blog-2016': { title: 'A lamp-trade blog, November 2016, indicator faults and bad earths on old cars; its opening was read', status: 'read', usedFor: 'bad earths, back-feeds, lamp holders' },
  'garage-column': { title: "A garage column on electrical faults on an owners' club page; its opening was read", status: 'read', usedFor: 'fuses and their clips' },
  'control-box-faults': { title: 'Control-box and dynamo fault notes; their opening was read', status: 'read', usedFor: 'cut-out faults' },
  'uk-lighting-1989': { title: 'UK Road Vehicles Lighting Regulations 1989, schedule 12 part I, stop lamps, as of July 2006; its opening was read', status: 'read', usedFor: 'stop lamps of old vehicles in the UK' },
  'trade-weekly-1970': { title: 'A commercial vehicle trade weekly, 27 February 1970, p. 36, stop lamps and indicators', status: 'read', usedFor: 'semaphore arms and flashers before 1965' },
  'wikipedia-circle-packing': { title: 'Wikipedia, "Circle packing in a circle", n = 1 to 20', status: 'read', usedFor: 'smallest bundle of equal wires' },
  'rest-volts-page-2009': { title: 'A page on lead-acid batteries, 2009; a second page gives overlapping ranges', status: 'read', usedFor: 'rest volts by charge and gravity' },
  'service-manual-1997': { title: "A vehicle's service manual, 1997. The texts of SAE J537 and BCI were not read", status: 'read', usedFor: 'battery rating definitions' },
  'battery-seller-page': { title: "A battery seller's page", status: 'read', usedFor: 'cranking amps' },
  'common-practice': { title: 'Trade knowledge without a named publication, and arithmetic on the other tables', status: 'common practice', usedFor: 'default figures and usual bands; always shown as assumed' },
} as const satisfies Readonly<Record<string, Source>>

const sourceById = new Map<string, Source>(Object.entries(sources))

/** The source with this id, or undefined for an id that is not in the table. */
export function findSource(id: string): Source | undefined {
  return sourceById.get(id)
}

/** A source in words, as it stands beside a value: its title, with its status unless it was read. */
export function nameSource(id: SourceId): string {
  const { title, status } = sources[id] as Source
  if (id === 'common-practice') return 'common practice, no source'
  return status === 'read' ? title : `${title} (${status})`
}
