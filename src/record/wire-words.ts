import type { WiringWire } from './wiring.ts'

/** A wire's size as it is written beside it: `1.5`, `16 AWG`, `28/0.30`; empty where it is not known. */
export function wireSize(wire: Pick<WiringWire, 'sizeMm2' | 'sizeAwg' | 'sizeStrands' | 'copperDiameterMm'>): string {
  if (typeof wire.sizeMm2 === 'number') return wire.sizeMm2 === 1 ? '1.0' : String(wire.sizeMm2)
  if (wire.sizeAwg !== undefined) return `${wire.sizeAwg} AWG`
  if (wire.sizeStrands !== undefined) return wire.sizeStrands
  return typeof wire.copperDiameterMm === 'number' ? `dia. ${wire.copperDiameterMm}` : ''
}

/** A wire's colour in a word, its tracers behind strokes: `brown/blue`; the letters as read where they are all that is known, else empty. */
export function wireHue({ colour }: Pick<WiringWire, 'colour'>): string {
  if (colour === undefined || colour === 'unknown') return ''
  if (colour === 'bare') return 'bare'
  return colour.base === 'unknown' ? colour.letters ?? '' : [colour.base, ...colour.tracers ?? []].join('/')
}
