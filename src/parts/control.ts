import * as z from 'zod'
import {
  known, showNames, type AxisSpec, type BuildContext, type ElementSpec, type Law, type Now, type ParamProblem, type Params, type PartKind, type TerminalSpec,
} from '../record/index.ts'
import { partDefaults } from '../standards/index.ts'
import { interpolate } from './curve.ts'
import { switchContact } from './defaults.ts'

const axisSchema = z.strictObject({
  title: z.string().optional()
    .describe('What people call it; left out, the part\'s title, or the axis\'s name where there are several.'),
  positions: z.array(z.string()).min(1).optional()
    .describe('Names of its positions, in the order in which it passes them; an axis has either these or a range.'),
  range: z.strictObject({
    from: z.number().describe('Number at one end of its travel.'),
    to: z.number().describe('Number at the other end.'),
    unit: z.string().optional().describe('What the numbers count, such as % or litres; left out, they are bare.'),
  }).optional().describe('The travel of an axis that moves without steps: a knob, a float, a temperature.'),
  rest: z.union([z.string(), z.number()])
    .describe('The position, or the number in its range, in which it stands unless it is set.'),
  springsFrom: known(z.array(z.string())).optional()
    .describe('Positions that spring back to rest when let go; left out, it stays where it is put.'),
  makeBeforeBreak: known(z.boolean()).optional()
    .describe('Whether on the way between two positions the contacts of both are made; left out, neither are.'),
  movedBy: known(z.enum([
    'driver', 'passenger', 'door', 'oil pressure', 'brake fluid', 'gear lever', 'temperature', 'fuel', 'suspension', 'engine', 'other',
  ])).optional().describe('Who or what moves it; left out, the driver.'),
  follows: z.partialRecord(z.enum(['stopped', 'cranking', 'running']), z.string()).optional()
    .describe('The position that it takes by itself while the engine stands, is cranked or runs, unless it is set; left out, it does not follow the engine.'),
})

const rowSchema = z.strictObject({
  when: z.record(z.string(), z.array(z.string()).min(1))
    .describe('Positions by axis: the row is made while every axis named is in one of its positions.'),
  joins: z.array(z.string()).min(2)
    .describe('Terminals that are then joined: the first to each of the others.'),
  ohm: known(z.number().min(0)).optional()
    .describe(`Each closed contact, ohm; left out, the record's assumed contact, else ${partDefaults.switchContactMohm.value} mΩ.`),
  ratingA: known(z.number().positive()).optional()
    .describe('Amps that it is made to switch, for people; no answer depends on it.'),
})

const resistorSchema = z.strictObject({
  between: z.tuple([z.string(), z.string()]).describe('Its two terminals.'),
  axis: z.string().describe('The axis that moves it, one with a range.'),
  ohmAt: z.array(z.tuple([z.number(), z.number().min(0)])).min(1)
    .describe('Pairs of a number on that axis and the ohms there, with straight lines between them.'),
})

const params = z.object({
  axes: z.record(z.string(), axisSchema)
    .describe('The ways in which it is moved, by name: a stalk that turns and tilts has two.'),
  rows: z.record(z.string(), rowSchema).optional()
    .describe('Its contacts, by name, as a switch table shows them; left out, it has none.'),
  resistors: z.record(z.string(), resistorSchema).optional()
    .describe('Resistances that it moves, by name, as in a dimmer or a sender; left out, it has none.'),
})
type ControlParams = z.infer<typeof params>

/** Any switch, stalk, pedal switch, pressure switch, dimmer or sender: axes that are moved, and rows of terminals that they join. */
export const control: PartKind = {
  kind: 'control',
  passes: true,
  plain: 'Something that is moved, by a hand, a pedal, a door or a pressure, and joins terminals in some of its positions.',
  params,
  terminals(raw: Params): TerminalSpec[] {
    const { rows = {}, resistors = {} } = raw as Partial<ControlParams>
    const named = [...Object.values(rows).flatMap((row) => row.joins), ...Object.values(resistors).flatMap((one) => one.between)]
    return [...new Set(named)].map((is) => ({ is, marking: is, what: 'terminal of the switch' }))
  },
  fails: (raw: Params) => [
    ...contactIds(raw).flatMap((id) => [
      { what: `burnt or dirty contact, ${id}`, fault: `ohms:*.${id}=0.5`, likelihood: 'common' as const },
      { what: `contact does not make, ${id}`, fault: `open:*.${id}`, likelihood: 'seen' as const },
    ]),
    ...Object.entries((raw as Partial<ControlParams>).rows ?? {}).flatMap(([id, { joins: [common, ...others] }]) => others.map((to) => (
      { what: `contact stuck made, ${rowId(id, [common, ...others], to)}`, fault: `join:*:${common}=*:${to}`, likelihood: 'seen' as const }))),
  ],
  check: (raw: Params) => checkControl(raw as Partial<ControlParams>),
  build(part, ctx) {
    const { axes, rows = {}, resistors = {} } = part.params as ControlParams
    return {
      elements: [
        ...Object.entries(rows).flatMap(([id, row]) => rowElements(id, row, ctx)),
        ...Object.entries(resistors).map(([id, one]): ElementSpec => ({
          id, from: one.between[0], to: one.between[1], does: 'load', axes: [one.axis],
          law: (now) => ({ kind: 'resistor', ohm: interpolate(one.ohmAt, Number(now.position(one.axis))) }),
        })),
      ],
      axes: Object.entries(axes).map(([id, axis]) => axisSpec(id, axis, Object.keys(axes).length > 1 ? id : part.title, bendsOf(resistors, id))),
    }
  },
}

/** Rows and resistors go by axes and positions of the control itself; rest and springs are positions too. */
function checkControl({ axes, rows = {}, resistors = {} }: Partial<ControlParams>): ParamProblem[] {
  // Axes that only a parameter set brings are checked with that set.
  if (!axes) return []
  const unknownAxis = (path: string[], name: string): ParamProblem[] => (Object.hasOwn(axes, name) ? [] : [{ path, expected: 'an axis of this control', received: name, valid: Object.keys(axes) }])
  return [
    ...Object.entries(axes).flatMap(([id, axis]) => checkAxis(id, axis)),
    ...Object.entries(rows).flatMap(([id, { when }]) => Object.entries(when).flatMap(([name, positions]) => [
      ...unknownAxis(['rows', id, 'when', name], name), ...positions.flatMap((position, i) => checkPosition(['rows', id, 'when', name, String(i)], axes[name], position)),
    ])),
    ...Object.entries(resistors).flatMap(([id, { axis }]) => unknownAxis(['resistors', id, 'axis'], axis)),
  ]
}

type Axis = z.infer<typeof axisSchema>

function checkAxis(id: string, axis: Axis): ParamProblem[] {
  const { positions, range, rest, springsFrom = [], follows = {} } = axis
  if (!positions === !range) return [{ path: ['axes', id], expected: 'either positions or a range', received: positions ? 'both' : 'neither' }]
  return [
    ...checkPosition(['axes', id, 'rest'], axis, rest),
    ...(springsFrom === 'unknown' ? [] : springsFrom).flatMap((position, i) => checkPosition(['axes', id, 'springsFrom', String(i)], axis, position)),
    ...Object.entries(follows).flatMap(([mode, position]) => checkPosition(['axes', id, 'follows', mode], axis, position)),
  ]
}

function isWithin(range: Axis['range'], at: number): boolean {
  return range !== undefined && at >= Math.min(range.from, range.to) && at <= Math.max(range.from, range.to)
}

function checkPosition(path: string[], axis: Axis | undefined, position: string | number): ParamProblem[] {
  if (axis?.range) {
    const { from, to } = axis.range
    return typeof position === 'number' && isWithin(axis.range, position) ? [] : [{ path, expected: `a number from ${from} to ${to}`, received: String(position) }]
  }
  if (!axis?.positions || axis.positions.includes(String(position))) return []
  return [{ path, expected: `one of ${showNames(axis.positions)}`, received: String(position), valid: axis.positions }]
}

/** One contact from the first terminal to each of the others; a row of two has one contact, named as the row. */
function rowElements(id: string, row: z.infer<typeof rowSchema>, ctx: BuildContext): ElementSpec[] {
  const ohm = ctx.number(['rows', id, 'ohm'], switchContact(ctx))
  const law = (now: Now): Law => (isMade(row.when, now) ? { kind: 'resistor', ohm } : { kind: 'open' })
  const [common, ...others] = row.joins
  return others.map((to) => ({ id: rowId(id, row.joins, to), from: common, to, law, does: 'contact', axes: Object.keys(row.when) }))
}

const rowId = (id: string, joins: readonly string[], to: string) => (joins.length === 2 ? id : `${id}.${to}`)

function contactIds(raw: Params): string[] {
  const { rows = {}, resistors = {} } = raw as Partial<ControlParams>
  return [...Object.entries(rows).flatMap(([id, { joins }]) => joins.slice(1).map((to) => rowId(id, joins, to))), ...Object.keys(resistors)]
}

/** Between two positions the axis reads `a|b` where it makes before it breaks, and nothing where it breaks first. */
function isMade(when: Readonly<Record<string, readonly string[]>>, now: Now): boolean {
  for (const axis in when) {
    const position = String(now.position(axis))
    const made = position.includes('|') ? position.split('|').some((one) => when[axis].includes(one)) : when[axis].includes(position)
    if (!made) return false
  }
  return true
}

/** Numbers of an axis at which a resistance that it moves changes otherwise than before. */
function bendsOf(resistors: NonNullable<ControlParams['resistors']>, axis: string): number[] {
  return Object.values(resistors).filter((one) => one.axis === axis).flatMap(({ ohmAt }) => ohmAt.map(([at]) => at))
}

function axisSpec(id: string, axis: z.infer<typeof axisSchema>, usualTitle: string, bends: readonly number[]): AxisSpec {
  return {
    id, title: axis.title ?? usualTitle, positions: axis.positions ?? [], rest: axis.rest, movedBy: axis.movedBy === 'unknown' ? 'other' : axis.movedBy ?? 'driver',
    ...(axis.range ? { range: axis.range, bends: bends.filter((at) => isWithin(axis.range, at)) } : {}), ...(Array.isArray(axis.springsFrom) ? { springsFrom: axis.springsFrom } : {}),
    ...(axis.makeBeforeBreak === true ? { makeBeforeBreak: true } : {}),
    ...(axis.follows ? { follows: axis.follows as Record<string, string> } : {}),
  }
}
