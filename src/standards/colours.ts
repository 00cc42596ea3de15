import {
  britishColourRows, colourConflictRows, colourUseRows, germanColourRows, iecColourRows,
  type ColourConflictRow, type ColourLetterRow, type ColourPractice, type ColourUseRow, type LetterConvention,
} from './colour-rows.ts'
import { notFound, type NotFound } from './refusal.ts'

/** A wire's insulation in words: its base and the stripes on it, in the words of the tables (violet for purple, grey for slate). */
export interface InsulationColour {
  readonly base: string
  readonly tracers: readonly string[]
}

/** The letters of one shop or one diagram: each with its colour in words. */
export interface OwnConvention {
  readonly name: string
  readonly letters: Readonly<Record<string, string>>
}

/** Whose letters a colour is written in. American practice has none: its colours are words. */
export type ColourConvention = LetterConvention | 'american' | OwnConvention

/** The same letters in another convention. */
export interface ColourReading {
  readonly convention: LetterConvention
  readonly colour: InsulationColour
}

/** What letters mean in a convention, what they would mean in the others where that differs, and the conflicts it touches. */
export type ColourRead =
  | {
    readonly ok: true
    readonly colour: InsulationColour
    readonly elsewhere: readonly ColourReading[]
    readonly conflicts: readonly ColourConflictRow[]
  }
  | (NotFound & { readonly elsewhere: readonly ColourReading[] })

/** Letters, or the words that the convention has no letters for. */
export type ColourWritten = { readonly ok: true; readonly letters: string } | (NotFound & { readonly unsayable: readonly string[] })

/** What a colour is for in a practice; `disputed` where sources disagree; and what it is for in the others. */
export type ColourUses =
  | {
    readonly ok: true
    readonly uses: readonly ColourUseRow[]
    readonly disputed: boolean
    readonly elsewhere: readonly ColourUseRow[]
    readonly conflicts: readonly ColourConflictRow[]
  }
  | NotFound

const letterRows: Readonly<Record<LetterConvention, readonly ColourLetterRow[]>> = {
  iec: iecColourRows, german: germanColourRows, british: britishColourRows,
}

const conventions = Object.keys(letterRows) as LetterConvention[]

/** Trade words for colours that the tables have under another word. */
const otherWords: Readonly<Record<string, string>> = { purple: 'violet', lilac: 'violet', slate: 'grey', gray: 'grey' }

const colourWords = new Set([
  ...conventions.flatMap((convention) => letterRows[convention].flatMap((row) => row.colours)), ...colourUseRows.map((row) => row.base),
])

const separator = /\s*(?:[/+,-]|\bwith\b|\band\b)\s*/i

/**
 * The colour that letters stand for in a convention: "sw/ws", "LGN", "GNYE"; also words, "brown" or "red with white". The
 * longest letters that fit are taken first, so LG is light green and not a G behind an L. Capital and small letters are the
 * same, which is why the convention must be known: `elsewhere` says what the same letters mean in the others.
 */
export function readColour(letters: string, convention: ColourConvention): ColourRead {
  const text = String(letters)
  const colour = spell(text, rowsOf(convention))
  const elsewhere = readAnywhere(text).filter((reading) => reading.convention !== convention && (!colour || !isSame(reading.colour, colour)))
  if (colour) return { ok: true, colour, elsewhere, conflicts: conflictsOf(text, colour) }
  const names = rowsOf(convention).map((row) => row.letters)
  const expected = convention === 'american' ? 'a colour in words: American practice has no letters' : `a colour in ${nameOf(convention)} letters`
  return { ...notFound(letters, expected, names.length > 0 ? names : [...colourWords]), elsewhere }
}

/** What letters mean in every convention that can read them, for a paper whose convention nobody knows yet. */
export function readAnywhere(letters: string): ColourReading[] {
  return conventions.flatMap((convention) => {
    const colour = spell(String(letters), letterRows[convention])
    return colour ? [{ convention, colour }] : []
  })
}

/**
 * The letters of a colour in a convention, base first: "sw/ws", "NY", in words where the practice is American. IEC 60757
 * joins its codes in the order of its table, which cannot say which is the base: where the base comes later a stroke
 * divides them. Refused with the words that the convention has no letters for.
 */
export function writeColour(colour: InsulationColour, convention: ColourConvention): ColourWritten {
  const words = [colour.base, ...colour.tracers].map(nameColour)
  if (convention === 'american') return { ok: true, letters: words.join('/') }
  const rows = rowsOf(convention).filter((row) => !row.readOnly && row.colours.length === 1)
  const found = words.map((word) => rows.findIndex((row) => row.colours[0] === word))
  const unsayable = words.filter((_, i) => found[i] < 0)
  if (unsayable.length > 0) return { ...notFound(unsayable.join(', '), `a colour with ${nameOf(convention)} letters`, rows.flatMap((row) => row.colours)), unsayable }
  const joined = convention === 'british' || (convention === 'iec' && found.every((at, i) => i === 0 || found[i - 1] < at))
  return { ok: true, letters: found.map((at) => rows[at].letters).join(joined ? '' : '/') }
}

/**
 * What a wire of this colour is for in a practice, and in the others, as the tables of colour and use have it. A hint and
 * never proof. Refused where the practice has no use for the colour.
 */
export function findColourUses(colour: InsulationColour, practice: ColourPractice): ColourUses {
  const named = { base: nameColour(colour.base), tracers: colour.tracers.map(nameColour) }
  const rows = colourUseRows.filter((row) => isSame(row, named))
  const uses = rows.filter((row) => row.practice === practice)
  const known = colourUseRows.filter((row) => row.practice === practice).map((row) => say(row))
  if (uses.length === 0) return notFound(say(named), `a colour with a use in the practice of ${practice}`, known)
  return {
    ok: true, uses, disputed: uses.some((row) => row.disputed === true), elsewhere: rows.filter((row) => row.practice !== practice),
    conflicts: conflictsOf('', named),
  }
}

/** A colour word as the tables have it: "purple" is violet, "slate" is grey; others in small letters. */
export function nameColour(word: string): string {
  const small = word.trim().toLowerCase()
  return otherWords[small] ?? small
}

function rowsOf(convention: ColourConvention): readonly ColourLetterRow[] {
  if (convention === 'american') return []
  if (typeof convention === 'string') return letterRows[convention]
  return Object.entries(convention.letters).map(([letters, colour]) => (
    { letters, colours: [nameColour(colour)], source: 'common-practice', status: 'common practice' }
  ))
}

function nameOf(convention: Exclude<ColourConvention, 'american'>): string {
  if (typeof convention !== 'string') return `${convention.name}'s`
  return { iec: 'IEC 60757', german: 'German', british: 'British' }[convention]
}

function spell(text: string, rows: readonly ColourLetterRow[]): InsulationColour | null {
  const parts = text.trim().split(separator).map((part) => (colourWords.has(nameColour(part)) ? [nameColour(part)] : spellPart(keyOf(part), rows)))
  const words = parts.flatMap((part) => part ?? [])
  if (words.length === 0 || parts.includes(null)) return null
  return { base: words[0], tracers: words.slice(1) }
}

/** The longest letters first; shorter ones where the rest cannot be read otherwise. */
function spellPart(key: string, rows: readonly ColourLetterRow[]): readonly string[] | null {
  const starts = rows.map((row) => ({ letters: keyOf(row.letters), colours: row.colours })).filter(({ letters }) => letters !== '' && key.startsWith(letters))
  for (const { letters, colours } of starts.toSorted((a, b) => b.letters.length - a.letters.length)) {
    const rest = key.slice(letters.length)
    const words = rest === '' ? [] : spellPart(rest, rows)
    if (words) return [...colours, ...words]
  }
  return null
}

function keyOf(letters: string): string {
  return letters.replace(/[\s.]/g, '').toLowerCase()
}

function isSame(a: InsulationColour, b: InsulationColour): boolean {
  return say(a) === say(b)
}

function say({ base, tracers }: InsulationColour): string {
  return [base, ...tracers].join('/')
}

function conflictsOf(letters: string, { base }: InsulationColour): ColourConflictRow[] {
  return colourConflictRows.filter((row) => row.colours.includes(base) || row.letters.includes(keyOf(letters)))
}
