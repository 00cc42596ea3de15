import * as z from 'zod'
import { known, type BuildContext, type ElementSpec, type LampSpec, type Params, type PartKind, type TerminalSpec } from '../record/index.ts'
import { findLamp, nameSource, partDefaults } from '../standards/index.ts'
import { practice, standard } from './defaults.ts'

const filamentSchema = z.strictObject({
  title: z.string().optional(),
  from: z.string().optional(), to: z.string().optional(),
  powerW: known(z.number().positive()).optional(),
  ratedV: known(z.number().positive()).optional(),
  coldRatio: known(z.number().min(1).max(30)).optional(),
})

const params = z.object({
  /** A bulb's category or trade number, such as P21/5W; its test volts and the watts there are looked up. */
  bulb: known(z.string()).optional(),
  powerW: known(z.number().positive()).optional(),
  ratedV: known(z.number().positive()).optional(),
  coldRatio: known(z.number().min(1).max(30)).optional(),
  colour: z.string().optional(),
  /** For a bulb of several filaments; each joins `from` (its own id by default) to `to` (`out` by default). */
  filaments: z.record(z.string(), filamentSchema).optional(),
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
  fails: [
    { what: 'burnt-out filament', fault: 'open:*', likelihood: 'common' },
    { what: 'corroded holder', fault: 'ohms:*=2', likelihood: 'common' },
  ],
  build(part, ctx) {
    const { filaments, bulb, colour } = part.params as LampParams
    const entries = Object.entries(filaments ?? { '': {} })
    const elements = entries.map(([id, one]): ElementSpec => {
      const path = id ? ['filaments', id] : []
      const rated = ratedFigures(bulb, id, part.params.ratedV, ctx)
      const ratedV = ctx.number([...path, 'ratedV'], rated.volts)
      return {
        id, from: one.from ?? (id || 'in'), to: one.to ?? 'out', does: 'load', ratedV, fedFrom: 10,
        law: {
          kind: 'filament', ratedV, ratedW: ctx.number([...path, 'powerW'], rated.watts),
          coldRatio: ctx.number([...path, 'coldRatio'], typeof part.params.coldRatio === 'number' ? practice(part.params.coldRatio, 'as the lamp') : standard(partDefaults.lampColdRatio)),
        },
      }
    })
    const lamps = elements.map(({ id, ratedV }): LampSpec => ({
      id, element: id, ratedV: ratedV as number, ...(filaments?.[id]?.title ? { title: filaments[id].title } : {}), ...(colour ? { colour } : {}),
    }))
    return { elements, lamps }
  },
}

/** Rated volts and watts: the bulb category's test figures where they are known, else cap volts and cap watts. */
function ratedFigures(bulb: string | undefined, filament: string, statedV: unknown, ctx: BuildContext) {
  const row = bulb === undefined ? undefined : bulbFilament(bulb, filament, ctx.systemV)
  const volts = row?.testV ?? row?.nominalV, watts = row?.powerW ?? row?.nominalW
  const why = row?.testV ? `${bulb} at its test voltage` : `${bulb}, cap figures`
  const capV = practice(typeof statedV === 'number' ? statedV : ctx.systemV, 'cap volts')
  return {
    volts: row && volts && typeof statedV !== 'number' ? { value: volts, why, source: nameSource(row.source) } : capV,
    watts: row && watts ? { value: watts, why, source: nameSource(row.source) } : practice(5, 'a small bulb; the watts are not stated'),
  }
}

/** The row of a bulb whose filament has this name, or one of its names (`stop/turn`); a bulb of one filament has but one row. */
function bulbFilament(bulb: string, filament: string, voltsV: number) {
  const found = findLamp(bulb, { voltsV })
  if (!found.ok) return undefined
  return found.filaments.find((row) => filament !== '' && (row.filament.startsWith(filament) || filament.startsWith(row.filament))) ?? (filament === '' ? found.filaments[0] : undefined)
}
