import * as z from 'zod'
import { known, type ElementSpec, type Params, type PartKind, type TerminalSpec } from '../record/index.ts'
import { partDefaults } from '../standards/index.ts'
import { checkPull, checkWindings, makeBobbin, windingSchema, type Bobbin, type WindingParams } from './bobbin.ts'
import { practice, relayContact } from './defaults.ts'

const contactSchema = z.strictObject({
  from: z.string().describe('One end of the contact; a name that begins with ~ is a point inside.'),
  to: z.string().describe('Its other end.'),
  closed: z.enum(['pulled', 'released']).optional()
    .describe('The state of the armature in which it is closed; left out, pulled.'),
  ohm: known(z.number().min(0)).optional()
    .describe(`Closed contact, ohm; left out, the record's assumed relay contact, else ${partDefaults.relayContactMohm.value} mΩ.`),
  ratingA: known(z.number().positive()).optional()
    .describe('Amps that it is made to switch, for people; no answer depends on it.'),
})

const params = z.object({
  windings: z.record(z.string(), windingSchema).optional()
    .describe('Windings on its core, by name; left out, one from 86 to 85, named coil.'),
  contacts: z.record(z.string(), contactSchema).optional()
    .describe('Contacts that its armature moves, by name; left out, one from 30 to 87, named make.'),
  pullAt: known(z.number().positive()).optional()
    .describe('Ampere-turns, of all windings together, at which the armature pulls; left out, those at pullV.'),
  releaseAt: known(z.number().positive()).optional()
    .describe('Ampere-turns below which it lets go; left out, those at releaseV, else well below its pull.'),
  pullV: known(z.number().positive()).optional()
    .describe('Volts over its first winding at which a plain relay pulls; left out, a usual share of the system\'s volts.'),
  releaseV: known(z.number().positive()).optional()
    .describe('Volts over its first winding below which a plain relay lets go; left out, well below its pull.'),
  pullMs: known(z.number().min(0)).optional()
    .describe('Time that it takes to pull, milliseconds; left out, a small relay.'),
  releaseMs: known(z.number().min(0)).optional()
    .describe('Time that it takes to let go, milliseconds; left out, a small relay.'),
})
type MagnetParams = z.infer<typeof params>

/** The plug-in relay of the trade: coil 86 to 85, contact 30 to 87. */
const PLAIN_WINDINGS: Readonly<Record<string, WindingParams>> = { coil: { from: '86', to: '85' } }
const PLAIN_CONTACTS: NonNullable<MagnetParams['contacts']> = { make: { from: '30', to: '87' } }

/** A relay, a solenoid, a cut-out: windings on one core, an armature, and the contacts it moves. */
export const electromagnet: PartKind = {
  kind: 'electromagnet',
  plain: 'Windings that pull an armature when their ampere-turns are enough, and the contacts that it makes and breaks. It lets go lower than it pulls.',
  params,
  terminals(raw: Params): TerminalSpec[] {
    const ends = [...Object.values(windingsOf(raw)), ...Object.values(contactsOf(raw))].flatMap(({ from, to }) => [from, to])
    return [...new Set(ends)].filter((is) => !is.startsWith('~')).map((is) => ({ is, marking: is, what: 'end of a winding or a contact' }))
  },
  fails: (raw: Params) => [
    ...Object.keys(windingsOf(raw)).map((id) => ({ what: `open winding, ${id}`, fault: `open:*.${id}`, likelihood: 'seen' as const })),
    ...Object.keys(contactsOf(raw)).map((id) => ({ what: `burnt contact, ${id}`, fault: `ohms:*.${contactId(id, raw)}=0.5`, likelihood: 'common' as const })),
    { what: 'contacts stuck', fault: 'hold:*.armature=pulled', likelihood: 'seen' },
    { what: 'armature jammed', fault: 'hold:*.armature=released', likelihood: 'rare' },
  ],
  check: (raw: Params) => [...checkWindings(windingsOf(raw), ['windings']), ...checkPull(raw, [])],
  build(part, ctx) {
    const bobbin = makeBobbin(windingsOf(part.params), ['windings'], ctx)
    const perVolt = firstPerVolt(bobbin)
    const pullAt = ctx.number(['pullAt'], () => {
      const pullV = ctx.number(['pullV'], practice(ctx.systemV * 2 / 3, 'pulls at two thirds of the system volts'))
      return practice(perVolt * pullV, 'from its pull volts')
    })
    const releaseAt = ctx.number(['releaseAt'], practice(releaseDefault(part.params, perVolt, pullAt), 'lets go well below its pull'))
    const pullMs = ctx.number(['pullMs'], practice(10, 'a small relay')), releaseMs = ctx.number(['releaseMs'], practice(8, 'a small relay'))
    const contactElements = Object.entries(contactsOf(part.params)).map(([id, { from, to, closed = 'pulled' }]): ElementSpec => {
      const ohm = ctx.number(['contacts', id, 'ohm'], relayContact(ctx))
      return { id: contactId(id, part.params), from, to, does: 'contact', law: (now) => (now.state('armature') === closed ? { kind: 'resistor', ohm } : { kind: 'open' }) }
    })
    return {
      elements: [...bobbin.elements, ...contactElements],
      states: [{
        id: 'armature', values: ['released', 'pulled'], rest: 'released', made: 'pulled',
        wants(view, value) {
          const turns = bobbin.ampereTurns(view)
          if (value === 'released') return Math.abs(turns) >= pullAt ? { value: 'pulled', afterMs: pullMs } : null
          const held = turns * (view.now.kept('armature') || Math.sign(turns))
          return held < releaseAt ? { value: 'released', afterMs: releaseMs } : null
        },
        // The direction in which it was pulled: to hold the other way, its iron would have to pass through zero first.
        keeps: (view, _, to) => (to === 'pulled' ? Math.sign(bobbin.ampereTurns(view)) : 0),
        keepsAtRest: (view, value) => (value === 'pulled' ? view.now.kept('armature') || Math.sign(bobbin.ampereTurns(view)) : 0),
      }],
    }
  },
}

const windingsOf = (raw: Params) => (raw as MagnetParams).windings ?? PLAIN_WINDINGS
const contactsOf = (raw: Params) => (raw as MagnetParams).contacts ?? PLAIN_CONTACTS

/** A contact is an element by its own name, or `NAME-contact` where a winding has that name. */
function contactId(id: string, raw: Params): string {
  return Object.hasOwn(windingsOf(raw), id) ? `${id}-contact` : id
}

/** Ampere-turns that one volt over the first winding gives. */
function firstPerVolt(bobbin: Bobbin): number {
  const [first] = bobbin.windings
  const law = bobbin.elements[0]?.law
  if (typeof law !== 'object' || law.kind !== 'resistor') throw new RangeError('an electromagnet needs a winding')
  return Math.abs(first.turns) / law.ohm
}

function releaseDefault(raw: Params, perVolt: number, pullAt: number): number {
  return typeof raw.releaseV === 'number' ? perVolt * raw.releaseV : pullAt * 0.3
}
