// Damaged records, each made from its seed alone: damageRecord(7) is the same text on every machine.
import { readdirSync, readFileSync } from 'node:fs'
import { seededChance } from '../builders/random-vehicle.ts'
import { bendDocument } from './bend.ts'
import { breakDocument, writeDocument } from './break.ts'
import { spoilText } from './spoil.ts'

/** Any JSON, for tests that write what the types forbid. */
export type Loose = any // any: these tests write what the types forbid

/** A source of chance with the picks that the damages need. */
export interface Chance {
  /** From 0 to 1. */
  share(): number
  below(n: number): number
  pick<T>(items: readonly T[]): T
}

/** One change; answers what was done, or nothing where the record has no place for it. */
export type Damage = (document: Loose, chance: Chance) => string | undefined

export interface Damaged {
  readonly seed: number
  /** The record that was damaged, and each thing done to it. */
  readonly how: string
  readonly bytes: Uint8Array
}

const ROOT = new URL('../../', import.meta.url)
const EXAMPLE = 'examples/vehicles/tessarby-errand.json'

/** The text of every sound record, by file; the large one is taken seldom. */
const SOUND: ReadonlyMap<string, string> = new Map([EXAMPLE, ...filesIn('test/records/')].map((file) => [file, readFileSync(new URL(file, ROOT), 'utf8')]))
const SMALL = [...SOUND.keys()].filter((file) => file !== EXAMPLE)

function filesIn(folder: string): string[] {
  return readdirSync(new URL(folder, ROOT)).filter((name) => name.endsWith('.json')).sort().map((name) => folder + name)
}

/** A sound record with one to four damages: bent but still a record in half of the cases, else broken, spoilt as a text, or both. */
export function damageRecord(seed: number): Damaged {
  const chance = makeChance(seed)
  const file = chance.share() < 0.04 ? EXAMPLE : chance.pick(SMALL)
  const document = JSON.parse(SOUND.get(file)!) as Loose
  const roll = chance.share()
  const how = [file]
  if (roll < 0.65) how.push(...several(chance, () => bendDocument(document, chance)))
  if (roll >= 0.5 && roll < 0.8) how.push(...several(chance, () => breakDocument(document, chance)))
  const text = writeDocument(document, chance.share() < 0.5 ? 2 : 0)
  if (roll < 0.75) return { seed, how: how.join('; '), bytes: new TextEncoder().encode(text) }
  const spoilt = spoilText(text, chance)
  return { seed, how: [...how, spoilt.how].join('; '), bytes: spoilt.bytes }
}

export function makeChance(seed: number): Chance {
  const share = seededChance(seed)
  const below = (n: number) => Math.floor(share() * n)
  return { share, below, pick: (items) => items[below(items.length)] }
}

function several(chance: Chance, damage: () => string): string[] {
  return Array.from({ length: 1 + chance.below(4) }, damage)
}
