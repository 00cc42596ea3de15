import type { SolvedSetting } from '../circuit/index.ts'
import type { Card } from './draw-card.ts'
import type { Scene, Shape, Spot, TextShape, Tone } from './scene.ts'
import { sceneShapes, type ShapeGroup } from './scene-shapes.ts'

/** Where the tones come from: the page's own variables, or fixed colours for a file that stands alone. */
export type Look = 'page' | 'day' | 'night'

const tones: Readonly<Record<'day' | 'night', Readonly<Record<string, string>>>> = {
  day: { ink: '#1f2328', soft: '#6a675d', rule: '#d9d1bd', bad: '#a3231a', doubtful: '#8a5a00', live: '#f0a400', lamp: '#ffc83d', sheet: '#fbf8f0', casing: '#1f2328' },
  night: { ink: '#ece5d6', soft: '#a29d8f', rule: '#343a41', bad: '#ff8a7a', doubtful: '#ffc266', live: '#d98e00', lamp: '#ffd257', sheet: '#181b1f', casing: '#9a9486' },
}

/** One group of the drawing as SVG, by which the page exchanges only what has changed. */
export interface DrawnGroup { readonly kind: ShapeGroup['kind']; readonly id: string; readonly label: string; readonly svg: string }

/** The scene as groups from back to front, in the page's tones. */
export function renderGroups(scene: Scene, solved: SolvedSetting | null, look: Look = 'page'): DrawnGroup[] {
  return sceneShapes(scene, solved).map((group) => ({ kind: group.kind, id: group.id, label: group.label, svg: groupSvg(group, look) }))
}

/** A whole drawing. In `page` its tones are the variables of the page; else it carries its own and stands alone. */
export function renderSvg(scene: Scene, solved: SolvedSetting | null, look: Look): string {
  const groups = renderGroups(scene, solved, look).map(({ kind, id, svg }) => `<g data-kind="${kind}" data-id="${escape(id)}">${svg}</g>`)
  const ground = look === 'page' ? '' : `<rect width="100%" height="100%" fill="${tones[look].sheet}"/>`
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${n(scene.width)} ${n(scene.height)}" font-family="'Barlow Semi Condensed', sans-serif">${ground}${groups.join('')}</svg>`
}

/** A connection card, as `renderSvg` a whole drawing. */
export function renderCard({ width, height, shapes, label }: Card, look: Look): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${n(width)} ${n(height)}" role="img" aria-label="${escape(label)}" font-family="'Barlow Semi Condensed', sans-serif">${shapes.map((shape) => shapeSvg(shape, look)).join('')}</svg>`
}

function groupSvg(group: ShapeGroup, look: Look): string {
  return reachSvg(group) + group.shapes.map((shape) => shapeSvg(shape, look)).join('')
}

/** An unseen area wide enough for a finger, and under a wire the line that marks it where the page picks it. */
function reachSvg({ kind, reach }: ShapeGroup): string {
  if (!reach) return ''
  const line = `points="${points(reach)}" fill="none"`
  if (kind === 'wire') return `<polyline class="mark" ${line}/><polyline class="reach" ${line} stroke="transparent" stroke-width="22"/>`
  if (reach.length === 1) return `<circle class="reach" cx="${n(reach[0][0])}" cy="${n(reach[0][1])}" r="12" fill="transparent"/>`
  return `<polygon class="reach" points="${points(reach)}" fill="transparent"/>`
}

function shapeSvg(shape: Shape, look: Look): string {
  switch (shape.kind) {
    case 'line': {
      const fill = shape.fill === undefined ? 'none' : css(shape.fill, look)
      const dash = shape.dash ? ` stroke-dasharray="${shape.dash.join(' ')}"${shape.dashFrom ? ` stroke-dashoffset="${shape.dashFrom}"` : ''}` : ''
      const strength = shape.strength !== undefined && shape.strength < 1 ? ` opacity="${shape.strength}"` : ''
      return `<polyline points="${points(shape.points)}" fill="${fill}" stroke="${css(shape.tone, look)}" stroke-width="${n(shape.width)}" stroke-linejoin="round"${dash}${strength}/>`
    }
    case 'circle': {
      const strength = shape.fillStrength !== undefined && shape.fillStrength < 1 ? ` fill-opacity="${n(shape.fillStrength)}"` : ''
      return `<circle cx="${n(shape.at[0])}" cy="${n(shape.at[1])}" r="${n(shape.r)}" fill="${css(shape.fill, look)}"${strength} stroke="${css(shape.tone, look)}" stroke-width="${n(shape.width)}"/>`
    }
    case 'rect':
      return `<rect x="${n(shape.x)}" y="${n(shape.y)}" width="${n(shape.w)}" height="${n(shape.h)}" rx="${shape.r}" fill="${css(shape.fill, look)}" stroke="${css(shape.tone, look)}" stroke-width="${n(shape.width)}"/>`
    case 'text':
      return textSvg(shape, look)
  }
}

function textSvg({ at: [x, y], text, size, weight, anchor, tone, upright }: TextShape, look: Look): string {
  const turn = upright ? ` transform="rotate(-90 ${n(x)} ${n(y)})"` : ''
  const bold = weight === 400 ? '' : ` font-weight="${weight}"`
  return `<text x="${n(x)}" y="${n(y)}" font-size="${size}"${bold}${anchor === 'start' ? '' : ` text-anchor="${anchor}"`} fill="${css(tone, look)}"${turn}>${escape(text)}</text>`
}

function css(tone: Tone, look: Look): string {
  if (typeof tone === 'object') return tone.css
  if (tone === 'none') return 'none'
  return look === 'page' ? `var(--${tone})` : tones[look][tone]
}

const n = (value: number) => String(Math.round(value * 10) / 10)
const points = (spots: readonly Spot[]) => spots.map(([x, y]) => `${n(x)},${n(y)}`).join(' ')
const escape = (text: string) => text.replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] ?? sign)
