import type { Assumption } from './wiring.ts'

/**
 * Assumptions of the same value for the same reason as one: `what` was taken and why, on whose word, and all the places it
 * was taken at. `said` is what and source in one.
 */
export interface AssumedLine { readonly what: string; readonly source: string; readonly said: string; readonly where: readonly string[] }

/** Values that nobody stated, alike ones together, those taken most often first. */
export function sayAssumed(assumed: readonly Assumption[]): AssumedLine[] {
  const lines = new Map<string, AssumedLine & { readonly where: string[] }>()
  for (const { path, value, why, source } of assumed) {
    const what = `${sayTaken(path, value)}: ${why}`
    const said = `${what} (${source})`
    const line = lines.get(said) ?? { what, source, said, where: [] }
    line.where.push(sayPlace(path))
    lines.set(said, line)
  }
  return [...lines.values()].sort((a, b) => b.where.length - a.where.length)
}

/** What becomes of a thing as a whole, where no value of it is meant. */
const FATES: readonly unknown[] = ['left out', 'loose']

function sayTaken(path: string, value: unknown): string {
  return capital(FATES.includes(value) ? String(value) : sayValue(fieldOf(path), value))
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1)

/** The last name of a path; of a list its own name, not the number in it. */
function fieldOf(path: string): string {
  const names = path.split('.').filter((name) => !/^\d+$/.test(name))
  return names[names.length - 1]
}

/** Endings of field names with the unit that they stand for; the longer before those they end in. */
const UNITS: readonly (readonly [string, string])[] = [
  ['OhmPerM', 'Ω a metre'], ['VPerCell', 'V a cell'], ['Ohm', 'Ω'], ['Rpm', 'rpm'], ['Ah', 'Ah'], ['Percent', '%'], ['Mm2', 'mm²'], ['Mm', 'mm'],
  ['V', 'V'], ['A', 'A'], ['W', 'W'], ['C', '°C'], ['S', 's'],
]

/** A field and its value in words: `jointOhm` 0.002 is a joint of 2 mΩ. */
function sayValue(field: string, value: unknown): string {
  const [ending, unit] = UNITS.find(([end]) => field.endsWith(end) || field === end.charAt(0).toLowerCase() + end.slice(1)) ?? ['', '']
  const name = field.slice(0, field.length - ending.length).replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()
  return `${name === '' ? 'resistance' : name} ${sayFigure(value, unit)}`
}

function sayFigure(value: unknown, unit: string): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value !== 'number') return String(value)
  const isSmall = unit.startsWith('Ω') && Math.abs(value) < 0.1 && value !== 0
  return `${Number((isSmall ? value * 1000 : value).toPrecision(4))}${unit === '' ? '' : ` ${isSmall ? 'm' : ''}${unit}`}`
}

/** Where in the record, as a fault names it: `wires.l4.ends.0.jointOhm` is l4.1, `parts.horn.params.ratedV` is horn. */
function sayPlace(path: string): string {
  const [collection, id, ...inside] = path.split('.')
  if (collection === 'engine') return 'engine'
  if (collection === 'duties' || collection === 'limits') return id
  if (collection === 'wires' && inside[0] === 'ends') return `${id}.${Number(inside[1]) + 1}`
  return [id, ...inside.slice(0, -1).filter((step) => step !== 'params')].join('.')
}
