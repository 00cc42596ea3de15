import { lampExponents } from './lamp-rows.ts'
import type { Sourced } from './sources.ts'

/** A figure taken where nobody measured or stated one, with the band it may lie in. Always shown as assumed. */
export interface PartDefault extends Sourced {
  readonly item: string
  readonly value: number
  readonly low?: number
  readonly high?: number
}

/** Default figures of parts and joints; the unit is in the key. */
export const partDefaults = {
  jointMohm: { item: 'crimped or screwed joint', value: 2, source: 'common-practice', status: 'common practice' },
  switchContactMohm: { item: 'switch contact', value: 10, source: 'common-practice', status: 'common practice' },
  relayContactMohm: { item: 'relay contact', value: 5, source: 'common-practice', status: 'common practice' },
  fuseClipsMohm: { item: 'fuse clips, without the element of the fuse', value: 3, source: 'common-practice', status: 'common practice' },
  fixingMohm: { item: 'fixing on clean metal', value: 1, source: 'common-practice', status: 'common practice' },
  lampColdRatio: { item: 'hot over cold resistance of a filament', value: 12, low: 8, high: 15, source: 'common-practice', status: 'common practice', note: 'the band is what test windows cover; 15 is the figure read for a mains lamp' },
  lampCurrentExponent: { item: 'lamp current by volts', value: lampExponents.current.value, source: 'wikipedia-rerating', status: 'read' },
  lampFluxExponent: { item: 'lamp light by volts', value: lampExponents.flux.value, low: lampExponents.flux.value, high: lampExponents.flux.toValue, source: 'wikipedia-rerating', status: 'read' },
  chargeCellV: { item: 'counter-voltage of a cell while it takes charge', value: 2.25, source: 'common-practice', status: 'common practice' },
  plainCoil12Ohm: { item: '12 V coil without ballast, primary', value: 3, low: 2.8, high: 3.5, source: 'common-practice', status: 'common practice', note: '12 V / 3 ohm is the usual 4 A' },
  coil6Ohm: { item: '6 V coil, primary', value: 1.5, low: 1, high: 1.6, source: 'common-practice', status: 'common practice', note: '6 V / 1.5 ohm is the usual 4 A' },
  ballastedCoilOhm: { item: 'ballasted coil, primary', value: 1.5, low: 1.3, high: 1.8, source: 'common-practice', status: 'common practice' },
  ballastOhm: { item: 'ballast resistor or resistance wire', value: 1.5, low: 1.2, high: 1.8, source: 'common-practice', status: 'common practice' },
  imperialStrandFactor: { item: 'resistance of British stranded cable over 0.0172 ohm mm2/m', value: 1.08, source: 'imperial-strands', status: 'common practice', note: 'British metric strands, read, lie at this factor over their true strand area' },
  imperialResistivityOhmMm2PerM: { item: 'resistivity that the factor is applied to', value: 0.0172, source: 'imperial-strands', status: 'common practice' },
} as const satisfies Readonly<Record<string, PartDefault>>
