import * as z from 'zod'
import { known, type BuildContext, type Default, type ElementSpec, type ParamProblem, type View } from '../record/index.ts'
import { practice } from './defaults.ts'

/** A winding between two ends. */
export const windingSchema = z.strictObject({
  from: z.string().describe('The end at which the winding begins; a name that begins with ~ is a point inside.'),
  to: z.string().describe('The end at which it ends.'),
  ohm: known(z.number().positive()).optional()
    .describe('Resistance of the winding, ohm; left out, a usual relay winding for the system\'s volts.'),
  turns: known(z.number()).optional()
    .describe('Turns round the core, below zero if they run the other way; left out, one, so that ampere-turns are amps.'),
})
export type WindingParams = z.infer<typeof windingSchema>

export interface Winding { readonly id: string; readonly turns: number }

/** The elements of some windings, and the ampere-turns that they give together. */
export interface Bobbin {
  readonly elements: readonly ElementSpec[]
  readonly windings: readonly Winding[]
  /** Signed sum of ampere-turns over the windings. */
  ampereTurns(view: View): number
  /** The same, counted positive in the direction of the winding with the most resistance: the one that feels the volts. */
  alongShunt(view: View): number
  /** Ampere-turns that a volt over that winding gives, and that an ampere through the one of least resistance gives. */
  readonly perVolt: number
  readonly perAmpere: number
}

/** A core without a winding pulls nothing; where its ends are known, a winding joins two of them. */
export function checkWindings(windings: Readonly<Record<string, WindingParams>>, path: readonly string[], ends?: readonly string[]): ParamProblem[] {
  if (Object.keys(windings).length === 0) return [{ path, expected: 'at least one winding', received: 'none' }]
  return Object.entries(windings).flatMap(([id, { from, to }]) => (['from', 'to'] as const).flatMap((key) => {
    const end = key === 'from' ? from : to
    return !ends || ends.includes(end) ? [] : [{ path: [...path, id, key], expected: 'an end of this part', received: end, valid: ends }]
  }))
}

/** What lets go higher than it pulls would never rest. */
export function checkPull({ pullAt, releaseAt }: Readonly<Record<string, unknown>>, path: readonly string[]): ParamProblem[] {
  if (typeof pullAt !== 'number' || typeof releaseAt !== 'number' || releaseAt <= pullAt) return []
  return [{ path: [...path, 'releaseAt'], expected: `at most pullAt, ${pullAt}`, received: String(releaseAt) }]
}

/** Windings on one core; `path` leads to them in the part's parameters. */
export function makeBobbin(windings: Readonly<Record<string, WindingParams>>, path: readonly string[], ctx: BuildContext, prefix = ''): Bobbin {
  const figure = (id: string, key: 'ohm' | 'turns', given: unknown, otherwise: Default): number =>
    ctx.number([...path, id, key], typeof given === 'number' ? practice(given, 'from the figures of the unit') : otherwise)
  const made = Object.entries(windings).map(([id, { from, to, ohm, turns }]) => ({
    id: prefix + id, from, to,
    ohm: figure(id, 'ohm', ohm, practice(80 * (ctx.systemV / 12) ** 2, 'a relay winding of about 2 W')),
    turns: figure(id, 'turns', turns, practice(1, 'turns not stated: the winding counts in amperes')),
  }))
  const shunt = made.reduce((most, one) => (one.ohm > most.ohm ? one : most))
  const ampereTurns = (view: View) => made.reduce((sum, { id, turns }) => sum + turns * view.amps(id), 0)
  return {
    windings: made,
    elements: made.map(({ id, from, to, ohm }): ElementSpec => ({ id, from, to, law: { kind: 'resistor', ohm }, does: 'winding' })),
    ampereTurns,
    perVolt: Math.abs(shunt.turns) / shunt.ohm,
    perAmpere: Math.abs(made.reduce((least, one) => (one.ohm < least.ohm ? one : least)).turns),
    alongShunt: (view) => ampereTurns(view) * (Math.sign(shunt.turns * view.amps(shunt.id)) || 1),
  }
}
