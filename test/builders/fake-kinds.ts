// Four part kinds with just enough in them to test the record room without the real ones.
import * as z from 'zod'
import type { Params, PartKind, TerminalSpec } from '../../src/record/index.ts'

/** Its ends come from the rows of contacts, as in a real control. */
const controlParams = z.strictObject({
  axes: z.record(z.string(), z.strictObject({
    positions: z.array(z.string()).optional(), range: z.strictObject({ from: z.number(), to: z.number() }).optional(),
    rest: z.union([z.string(), z.number()]),
  })),
  rows: z.record(z.string(), z.strictObject({ when: z.record(z.string(), z.array(z.string())), joins: z.array(z.string()) })).optional(),
})

export const fakeKinds: readonly PartKind[] = [
  fakeKind('battery', z.strictObject({ capacityAh: z.number().positive().optional() }), () => ends('+', '-')),
  fakeKind('lamp', z.strictObject({ powerW: z.number().positive().optional(), voltsV: z.number().positive().optional() }), () => ends('58', '31')),
  fakeKind('control', controlParams, listControlEnds),
  fakeKind('relay', z.strictObject({ pullV: z.number().optional(), windings: z.record(z.string(), z.strictObject({ ohm: z.number() })).optional() }),
    () => ends('85', '86', '30', '87')),
]

function fakeKind(kind: string, params: z.ZodObject, terminals: PartKind['terminals']): PartKind {
  return { kind, plain: `A ${kind}.`, params, terminals, fails: () => [], build: () => ({ elements: [] }) }
}

function ends(...names: readonly string[]): TerminalSpec[] {
  return names.map((name) => ({ is: name, marking: name, what: `end ${name}` }))
}

function listControlEnds(params: Params): TerminalSpec[] {
  const { rows = {} } = params as z.infer<typeof controlParams>
  return ends(...new Set(Object.values(rows).flatMap(({ joins }) => joins)))
}
