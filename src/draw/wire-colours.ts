import type { WiringWire } from '../record/index.ts'
import { awgAreaMm2, readAwg, readStrands, strandsAreaMm2 } from '../standards/index.ts'

/** How a wire is drawn and lettered. An empty `base` is a wire whose colour nobody knows. */
export interface WireColour {
  readonly base: string
  readonly tracers: readonly string[]
  readonly letters: string
  readonly words: string
}

interface Hue { readonly css: string; readonly letters: string }

/** Insulation colours by name; letters after IEC 60757, with L and D before them for light and dark. */
const hues: Readonly<Record<string, Hue>> = {
  black: { css: '#26231f', letters: 'BK' },
  brown: { css: '#7a4a28', letters: 'BN' },
  red: { css: '#c22a20', letters: 'RD' },
  orange: { css: '#e0761a', letters: 'OG' },
  yellow: { css: '#eac81e', letters: 'YE' },
  green: { css: '#2e8540', letters: 'GN' },
  blue: { css: '#2559a8', letters: 'BU' },
  violet: { css: '#7b4a9e', letters: 'VT' },
  purple: { css: '#7b4a9e', letters: 'VT' },
  grey: { css: '#8b8d8c', letters: 'GY' },
  gray: { css: '#8b8d8c', letters: 'GY' },
  slate: { css: '#6f767b', letters: 'GY' },
  white: { css: '#fbf9f3', letters: 'WH' },
  pink: { css: '#e59aa9', letters: 'PK' },
  turquoise: { css: '#2ba39b', letters: 'TQ' },
  gold: { css: '#b58d2a', letters: 'GD' },
  silver: { css: '#b9bcbd', letters: 'SR' },
  'light green': { css: '#77b64f', letters: 'LGN' },
  'dark green': { css: '#1f5c30', letters: 'DGN' },
  'light blue': { css: '#6ba3d6', letters: 'LBU' },
  'dark blue': { css: '#1b3d78', letters: 'DBU' },
  'light brown': { css: '#b07f4f', letters: 'LBN' },
}

const BARE: WireColour = { base: '#b3794a', tracers: [], letters: 'bare', words: 'bare' }
const UNKNOWN: WireColour = { base: '', tracers: [], letters: '?', words: 'colour not known' }

/** Colour, tracers, letters and words of a wire. The record's own letters go before those of the standard. */
export function wireColour(wire: Pick<WiringWire, 'colour'>): WireColour {
  const { colour } = wire
  if (colour === 'bare') return BARE
  if (colour === undefined || colour === 'unknown' || colour.base === 'unknown') return UNKNOWN
  const names = [colour.base, ...colour.tracers ?? []]
  return {
    base: cssOf(colour.base),
    tracers: (colour.tracers ?? []).map(cssOf),
    letters: colour.letters ?? names.map(lettersOf).join('/'),
    words: colour.tracers?.length ? `${colour.base} with ${colour.tracers.join(' and ')}` : colour.base,
  }
}

function cssOf(name: string): string {
  return hues[name.trim().toLowerCase()]?.css ?? '#8b8d8c'
}

function lettersOf(name: string): string {
  return hues[name.trim().toLowerCase()]?.letters ?? name
}

/** Copper section in mm2 for the weight of the line, or 1.5 where nobody knows it. */
export function drawnSection(wire: WiringWire): number {
  if (typeof wire.sizeMm2 === 'number') return wire.sizeMm2
  const strands = readStrands(wire.sizeStrands ?? '')
  if (strands) return strandsAreaMm2(strands)
  const awg = readAwg(wire.sizeAwg ?? '')
  if (awg !== null) return awgAreaMm2(awg)
  if (typeof wire.copperDiameterMm === 'number') return Math.PI / 4 * wire.copperDiameterMm ** 2
  return 1.5
}
