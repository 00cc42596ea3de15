import { wireSize, type WiringWire } from '../record/index.ts'
import { LETTER, type SceneWire, type TextShape, type Tone } from './scene.ts'
import { textWidth } from './text-widths.ts'
import { drawnSection, wireColour } from './wire-colours.ts'

/** The letters and the size of a wire as they stand along it. */
export function wireLabel(wire: WiringWire): string {
  return [wireColour(wire).letters, wireSize(wire)].filter((word) => word !== '').join(' ')
}

/** A wire's label as it is lettered. */
export function labelShape({ text, at, upright }: NonNullable<SceneWire['label']>, tone: Tone = 'ink'): TextShape {
  return { kind: 'text', at, text, size: LETTER, weight: 400, anchor: 'middle', tone, upright }
}

export function labelLength(text: string): number {
  return textWidth(text, LETTER) + 7
}

/** Width of a wire's line by its section: 0.75 mm2 fine, a battery lead heavy. */
export function lineWidth(wire: WiringWire): number {
  return Math.min(6, Math.max(2.6, 2 + 1.2 * Math.sqrt(drawnSection(wire))))
}
