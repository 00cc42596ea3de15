import * as z from 'zod'
import {
  known, type BuildContext, type ElementSpec, type ParamProblem, type Params, type PartKind, type StateSpec, type TerminalSpec, type View,
} from '../record/index.ts'
import { partDefaults } from '../standards/index.ts'
import { practice, relayContact } from './defaults.ts'

const inputSchema = z.strictObject({
  from: z.string().optional().describe('The end that is felt; left out, the input is the engine\'s speed.'),
  to: z.string().optional().describe('The end against which it is felt, mostly the earth; needed with from.'),
  aboveV: known(z.number().positive()).optional()
    .describe('Volts between the two, either way round, from which the input is on; left out, half of the system\'s.'),
  dropsV: known(z.number().min(0)).optional()
    .describe('Volts below which an input that is on goes off; left out, four fifths of aboveV.'),
  ohm: known(z.number().positive()).optional()
    .describe('What the input takes between the two, ohm: a relay\'s winding, or much for electronics; left out, it takes nothing.'),
  aboveRpm: known(z.number().positive()).optional()
    .describe('For an input without ends: engine speed, turns a minute, from which it is on; left out, as soon as it turns.'),
})

const loadSchema = z.strictObject({
  from: z.string().describe('One end of the load.'),
  to: z.string().describe('Its other end.'),
  ohm: known(z.number().min(0)).optional().describe('Its resistance, ohm; left out, a small buzzer or a lamp inside.'),
})

const contactSchema = z.strictObject({
  from: z.string().describe('One end of the contact.'),
  to: z.string().describe('Its other end.'),
  ohm: known(z.number().min(0)).optional()
    .describe(`Closed contact, or transistor, ohm; left out, the record's assumed relay contact, else ${partDefaults.relayContactMohm.value} mΩ.`),
})

const stepSchema = z.strictObject({
  when: z.array(z.string()).optional().describe('Inputs that must be on for this step; left out, none need be.'),
  unless: z.array(z.string()).optional().describe('Inputs that must be off; left out, none need be.'),
  afterMs: z.number().min(0).optional().describe('How long that must last, milliseconds; left out, 10.'),
  to: z.string().describe('The state that follows.'),
})

const stateSchema = z.strictObject({
  closed: z.array(z.string()).optional().describe('Contacts that are closed in this state; left out, none.'),
  next: z.array(stepSchema).optional().describe('Steps that lead out of it, the first that holds being taken; left out, it stays.'),
  tells: z.string().optional().describe('What a person is told while it lasts, as in "forbids starting"; left out, nothing.'),
})

const params = z.object({
  inputs: z.record(z.string(), inputSchema).optional().describe('What it feels, by name: volts between two of its ends, or the engine turning; left out, nothing.'),
  loads: z.record(z.string(), loadSchema).optional().describe('What else it takes current for, by name; left out, nothing.'),
  contacts: z.record(z.string(), contactSchema).optional().describe('Contacts or transistors that its states close, by name; left out, none.'),
  states: z.record(z.string(), stateSchema).optional()
    .describe('Its states by name: what is closed in each and what leads to the next; left out, one that feels a supply on 15 against 31 and closes 30 to 87.'),
  starts: z.string().optional().describe('The state in which it is without supply; left out, the first.'),
})
type ModuleParams = z.infer<typeof params>

/** A module of which nothing is stated: as a relay from 15 to 31 that takes little. */
const PLAIN: Required<Omit<ModuleParams, 'starts' | 'loads'>> = {
  inputs: { fed: { from: '15', to: '31' } },
  contacts: { out: { from: '30', to: '87' } },
  states: { rest: { next: [{ when: ['fed'], to: 'on' }] }, on: { closed: ['out'], next: [{ unless: ['fed'], to: 'rest' }] } },
}

/** Time that a step takes where none is stated, ms; common practice, no source. */
const STEP_MS = 10
/** An input goes off at this share of the volts that switch it on; common practice, no source. */
const DROPS = 0.8

/** A box that follows a table: its inputs and its state give the contacts that are closed and the state that comes next, with delays. */
export const module: PartKind = {
  kind: 'module',
  plain: 'A box whose inside nobody draws: it feels volts on some of its ends, and closes or opens contacts by a fixed table, some after a delay.',
  params,
  terminals(raw: Params): TerminalSpec[] {
    const { inputs, loads, contacts } = tableOf(raw)
    const ends = [...Object.values(inputs), ...Object.values(loads), ...Object.values(contacts)].flatMap(({ from, to }) => [from, to])
    return [...new Set(ends.filter((end) => end !== undefined))].map((is) => ({ is, marking: is, what: 'end of an input, a load or a contact' }))
  },
  fails(raw: Params) {
    const { contacts, loads, states } = tableOf(raw)
    return [
      ...Object.keys(contacts).map((id) => ({ what: `contact or transistor dead, ${id}`, fault: `open:*.${id}`, likelihood: 'seen' as const })),
      ...Object.keys(loads).map((id) => ({ what: `open inside, ${id}`, fault: `open:*.${id}`, likelihood: 'rare' as const })),
      ...Object.keys(states).map((id) => ({ what: `stuck in ${id}`, fault: `hold:*.state=${id}`, likelihood: 'rare' as const })),
    ]
  },
  check: (raw: Params) => checkTable(raw),
  build(part, ctx) {
    const { inputs, loads, contacts, states, starts } = tableOf(part.params)
    const felt = Object.entries(inputs).map(([id, input]) => makeInput(id, input, ctx))
    return {
      elements: [
        ...felt.flatMap(({ element }) => (element ? [element] : [])),
        ...Object.entries(loads).map(([id, { from, to }]): ElementSpec => ({
          id, from, to, does: 'load', law: { kind: 'resistor', ohm: ctx.number(['loads', id, 'ohm'], practice(ctx.systemV * 10, 'a load of 100 mA inside')) },
        })),
        ...Object.entries(contacts).map(([id, { from, to }]): ElementSpec => {
          const closed = { kind: 'resistor', ohm: ctx.number(['contacts', id, 'ohm'], relayContact(ctx)) } as const
          return { id, from, to, does: 'contact', law: (now) => (states[now.state('state')]?.closed?.includes(id) ? closed : { kind: 'open' }) }
        }),
      ],
      states: [...felt.map(({ state }) => state), tableState(states, starts, inputs)],
      ...(Object.values(inputs).some(({ from }) => from === undefined) ? { turns: true } : {}),
    }
  },
}

function tableOf(raw: Params) {
  const { inputs, loads = {}, contacts, states, starts } = raw as ModuleParams
  const isPlain = !inputs && !contacts && !states && Object.keys(loads).length === 0
  const table = { inputs: inputs ?? (isPlain ? PLAIN.inputs : {}), loads, contacts: contacts ?? (isPlain ? PLAIN.contacts : {}), states: states ?? (isPlain ? PLAIN.states : { on: {} }) }
  return { ...table, starts: starts ?? Object.keys(table.states)[0] }
}

interface Felt { readonly element?: ElementSpec; readonly state: StateSpec }

/** An input is a state of its own, so that it goes off lower than it comes on. */
function makeInput(id: string, { from, to, ohm }: z.infer<typeof inputSchema>, ctx: BuildContext): Felt {
  const path = ['inputs', id]
  const make = (isOn: (view: View) => boolean, isOff: (view: View) => boolean): StateSpec => ({
    id: stateOfInput(id), values: ['off', 'on'], rest: 'off',
    wants: (view, value) => (value === 'off' ? (isOn(view) ? { value: 'on', afterMs: 0 } : null) : isOff(view) ? { value: 'off', afterMs: 0 } : null),
  })
  if (from === undefined || to === undefined) {
    const aboveRpm = ctx.number([...path, 'aboveRpm'], practice(1, 'as soon as the engine turns'))
    return { state: make(({ now }) => now.engineRpm >= aboveRpm, ({ now }) => now.engineRpm < aboveRpm) }
  }
  const aboveV = ctx.number([...path, 'aboveV'], practice(ctx.systemV / 2, 'half of the system\'s volts'))
  const dropsV = ctx.number([...path, 'dropsV'], practice(aboveV * DROPS, 'four fifths of what switches it on'))
  const volts = (view: View) => Math.abs(view.volts(from, to))
  return {
    state: make((view) => volts(view) >= aboveV, (view) => volts(view) < dropsV),
    ...(typeof ohm === 'number' ? { element: { id: `${id}-input`, from, to, does: 'winding' as const, law: { kind: 'resistor' as const, ohm } } } : {}),
  }
}

const stateOfInput = (id: string) => `input-${id}`

function tableState(states: Readonly<Record<string, z.infer<typeof stateSchema>>>, starts: string, inputs: object): StateSpec {
  const tells = Object.fromEntries(Object.entries(states).flatMap(([id, state]) => (state.tells === undefined ? [] : [[id, state.tells]])))
  return {
    id: 'state', values: Object.keys(states), rest: starts, tells,
    wants({ now }, value) {
      // An input that this vehicle's module has not got is off.
      const isOn = (input: string) => Object.hasOwn(inputs, input) && now.state(stateOfInput(input)) === 'on'
      const step = states[value]?.next?.find(({ when = [], unless = [] }) => when.every(isOn) && !unless.some(isOn))
      return step ? { value: step.to, afterMs: step.afterMs ?? STEP_MS } : null
    },
  }
}

/** Steps go by inputs, contacts and states of the module itself; an input has both of its ends or neither. */
function checkTable(raw: Params): ParamProblem[] {
  const { inputs, contacts, states, starts } = tableOf(raw)
  const named = (path: readonly string[], name: string, valid: object, expected: string): ParamProblem[] =>
    (Object.hasOwn(valid, name) ? [] : [{ path, expected, received: name, valid: Object.keys(valid) }])
  return [
    ...named(['starts'], starts, states, 'a state of this module'),
    ...Object.entries(inputs).flatMap(([id, { from, to }]) =>
      ((from === undefined) === (to === undefined) ? [] : [{ path: ['inputs', id], expected: 'both ends, or neither', received: from === undefined ? 'only to' : 'only from' }])),
    ...Object.entries(states).flatMap(([id, { closed = [], next = [] }]) => [
      ...closed.flatMap((contact, i) => named(['states', id, 'closed', String(i)], contact, contacts, 'a contact of this module')),
      ...next.flatMap(({ when = [], unless = [], to }, s) => [
        ...when.flatMap((input, i) => named(['states', id, 'next', String(s), 'when', String(i)], input, inputs, 'an input of this module')),
        ...unless.flatMap((input, i) => named(['states', id, 'next', String(s), 'unless', String(i)], input, inputs, 'an input of this module')),
        ...named(['states', id, 'next', String(s), 'to'], to, states, 'a state of this module'),
      ]),
    ]),
  ]
}
