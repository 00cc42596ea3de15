import * as z from 'zod'
import { known, type BuildContext, type ElementSpec, type LampSpec, type Params, type PartKind, type TerminalSpec } from '../record/index.ts'
import { findLamp, nameSource, partDefaults } from '../standards/index.ts'
import { practice, standard } from './defaults.ts'

const filamentSchema = z.strictObject({
  title: z.string().optional().describe('What people call it; left out, its name.'),
  from: z.string().optional().describe('The end at which it begins; left out, an end of the filament\'s own name.'),
  to: z.string().optional().describe('The end at which it ends; left out, out.'),
  powerW: known(z.number().positive()).optional()
    .describe('Watts at its rated volts; left out, the listed watts of that filament of the bulb, else a small bulb.'),
  ratedV: known(z.number().positive()).optional().describe('Volts at which its watts are stated; left out, as the lamp.'),
  coldRatio: known(z.number().min(1).max(30)).optional().describe('Its hot resistance to its cold one; left out, as the lamp.'),
})

const params = z.object({
  bulb: known(z.string()).optional()
    .describe('Category or trade number of the bulb, such as P21/5W, by which its volts and watts are looked up; left out, they are as stated here.'),
  powerW: known(z.number().positive()).optional()
    .describe('Watts at its rated volts, for a bulb of one filament; left out, the listed watts of the bulb, else a small bulb.'),
  ratedV: known(z.number().positive()).optional()
    .describe('Volts at which its watts are stated; left out, the listed volts of the bulb, else those of the system.'),
  coldRatio: known(z.number().min(1).max(30)).optional()
    .describe(`Its hot resistance to its cold one; left out, ${partDefaults.lampColdRatio.value}.`),
  colour: z.string().optional().describe('Colour of its light, as a word, for people; no answer depends on it.'),
  filaments: z.record(z.string(), filamentSchema).optional()
    .describe('The filaments of a bulb that has several, by name, such as stop and tail; left out, it has one, from in to out.'),
})
type LampParams = z.infer<typeof params>

/** A filament lamp of one or several filaments. */
export const lamp: PartKind = {
  kind: 'lamp',
  plain: 'A bulb in its holder. Its resistance is a twelfth when cold, so a starved lamp takes more than its share of current.',
  params,
  terminals(raw: Params): TerminalSpec[] {
    const filaments = (raw as LampParams).filaments
    if (!filaments) return [{ is: 'in', marking: 'in', what: 'contact of the cap' }, { is: 'out', marking: 'out', what: 'shell or second contact' }]
    const named = Object.entries(filaments).flatMap(([id, one]) => [one.from ?? id, one.to ?? 'out'])
    return [...new Set(named)].map((is) => ({ is, marking: is, what: is === 'out' ? 'shell' : `contact of the ${is} filament` }))
  },
  fails: (raw: Params) => [
    ...Object.keys((raw as LampParams).filaments ?? { '': {} }).map((id) => ({
      what: `burnt-out filament${id && `, ${id}`}`, fault: `open:*${id && `.${id}`}`, likelihood: 'common' as const,
    })),
    { what: 'corroded holder', fault: 'ohms:*=2', likelihood: 'common' },
  ],
  build(part, ctx) {
    const raw = part.params as LampParams
    const entries = Object.entries(raw.filaments ?? { '': {} })
    const elements = entries.map(([id, one]) => filamentElement(raw, id, one, ctx))
    const lamps = elements.map(({ id, ratedV }, i): LampSpec => {
      const { title } = entries[i][1]
      return { id, element: id, ratedV, ...(title ? { title } : {}), ...(raw.colour ? { colour: raw.colour } : {}) }
    })
    return { elements, lamps }
  },
}

type Filament = z.infer<typeof filamentSchema>

function filamentElement(raw: LampParams, id: string, one: Filament, ctx: BuildContext): ElementSpec & { readonly ratedV: number } {
  const path = id ? ['filaments', id] : []
  const listed = listedFigures(raw, id, one, ctx)
  const ratedV = ctx.number([...path, 'ratedV'], typeof raw.ratedV === 'number' ? practice(raw.ratedV, 'as the lamp') : listed.volts)
  return {
    id, from: one.from ?? (id || 'in'), to: one.to ?? 'out', does: 'load', ratedV, fedFrom: 10,
    law: {
      kind: 'filament', ratedV, ratedW: ctx.number([...path, 'powerW'], () => listed.wattsAt(ratedV)),
      coldRatio: ctx.number([...path, 'coldRatio'], typeof raw.coldRatio === 'number' ? practice(raw.coldRatio, 'as the lamp') : standard(partDefaults.lampColdRatio)),
    },
  }
}

/** P ~ V·I about the rated point: watts follow the volts once more than the current does. */
const POWER_EXPONENT = 1 + partDefaults.lampCurrentExponent.value

/**
 * Volts and watts of a filament where the record does not state them: with the bulb named, its category's test volts and the
 * watts there, or its cap volts where the record states cap watts; watts at other volts are those of the same filament.
 */
function listedFigures(raw: LampParams, id: string, one: Filament, ctx: BuildContext) {
  const capV = practice(ctx.systemV, 'cap volts')
  const found = raw.bulb === undefined || raw.bulb === 'unknown' ? null : bulbFilament(raw.bulb, id, raw.ratedV ?? one.ratedV, ctx.systemV)
  if (typeof found === 'string' || found === null) {
    const why = found ?? 'a small bulb; the watts are not stated'
    return { volts: capV, wattsAt: () => practice(5, why) }
  }
  const atCap = typeof one.powerW === 'number' || typeof raw.powerW === 'number' || found.testV === null || found.powerW === null
  const volts = (atCap ? found.nominalV : found.testV) ?? ctx.systemV, watts = (atCap ? found.nominalW : found.powerW)
  const source = nameSource(found.source), why = `${raw.bulb} ${atCap ? 'by its cap' : 'at its test voltage'}`
  return {
    volts: { value: volts, why, source },
    wattsAt: (ratedV: number) => (watts === null ? practice(5, `${raw.bulb} is listed without watts: find them out`)
    : { value: watts * (ratedV / volts) ** POWER_EXPONENT, why, source }),
  }
}

/** The row of a bulb for the filament of this name, on the volts stated or else the system's; a sentence where there is none. */
function bulbFilament(bulb: string, filament: string, statedV: unknown, systemV: number) {
  const nominalV = typeof statedV === 'number' ? [6, 12, 24].reduce((near, v) => (Math.abs(v - statedV) < Math.abs(near - statedV) ? v : near)) : systemV
  const found = findLamp(bulb, { voltsV: nominalV })
  if (!found.ok) return found.sentence
  const row = filament === '' ? found.filaments[0] : found.filaments.find((one) => one.filament.startsWith(filament) || filament.startsWith(one.filament))
  return row ?? `${bulb} has no filament ${filament}: it has ${found.filaments.map((one) => one.filament).join(', ')}`
}
