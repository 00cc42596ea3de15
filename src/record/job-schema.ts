import * as z from 'zod'
import { editSchema, type Edit } from './edit.ts'
import { ENGINE_STATES } from './engine-states.ts'
import type { Json } from './path.ts'
import {
  colour, FORMAT_VERSION, id, known, lengthMm, point, recordSchema, text, vehicleSchema, type DeepReadonly, type KindSchema, type Vehicle,
  type WiringRecord,
} from './schema.ts'

/** Who wrote an entry and when, as far as anyone said. */
const said = { by: text.optional(), when: text.optional(), note: text.optional() }

/** SHA-256 of a photo's bytes; the bytes themselves are kept beside the job. */
const digest = z.string().regex(/^[0-9a-f]{64}$/)

/** One end of one wire of the old wiring, as found before it is taken out. Never changed: a better look is another entry. */
const surveyEntry = z.strictObject({
  /** The label tied to the wire; both ends carry the same one. */
  label: text, end: z.enum(['first', 'second', 'other']),
  /** What it is joined to, where that is known in the record; else where it was found, in words. */
  at: z.union([point, z.literal('unknown'), z.literal('loose')]).optional(),
  where: text.optional(), place: known(id).optional(),
  marking: known(text).optional(), form: known(text).optional(), fitting: known(text).optional(),
  colour: z.union([colour, z.literal('bare'), z.literal('unknown')]).optional(),
  cable: known(text).optional(), sizeMm2: known(z.number().positive()).optional(), sizeAwg: text.optional(), sizeStrands: text.optional(),
  copperDiameterMm: known(z.number().positive()).optional(), insulationDiameterMm: known(z.number().positive()).optional(),
  tailMm: lengthMm.optional(), lengthMm: lengthMm.optional(),
  state: z.enum(['sound', 'brittle', 'bare', 'burnt', 'corroded', 'broken', 'cut', 'repaired', 'added', 'unknown']).optional(),
  photos: z.array(id).optional(),
  /** The entry that this one corrects. */
  corrects: id.optional(),
  ...said,
})

/** The setting in which something was measured; a control that is not named was at rest. */
const setting = z.strictObject({
  controls: z.record(z.string(), z.union([z.string(), z.number()])).optional(),
  engine: z.union([z.enum(ENGINE_STATES), z.number()]).optional(),
  battery: z.enum(['full', 'low', 'off', 'unknown']).optional(),
  phases: z.record(z.string(), z.string()).optional(),
  /** Points whose wires were taken off, and what stood in for the supply. */
  apart: z.array(point).optional(), supply: text.optional(),
})

/** One measured or seen value. Volts and ohms are between two points, amps are through one. */
const reading = z.strictObject({
  from: point, to: point.optional(), through: id.optional(),
  quantity: z.enum(['volts', 'ohms', 'amps', 'continuity', 'light', 'sound']),
  value: z.union([z.number(), z.boolean(), z.enum(['over range', 'unsteady', 'unknown'])]),
  setting, meter: text.optional(),
  step: text.optional(), stage: z.enum(['before', 'during', 'first power', 'after']).optional(), photos: z.array(id).optional(),
  corrects: id.optional(),
  ...said,
})

const photo = z.strictObject({
  digest, type: z.enum(['image/jpeg', 'image/png', 'image/webp', 'image/heic']), bytes: z.int().min(0).optional(),
  widthPx: z.int().positive().optional(), heightPx: z.int().positive().optional(),
  title: text.optional(), about: z.array(z.array(z.string()).min(1)).optional(),
  ...said,
})

/** A step done, or found not to be done after all; the last tick of a step counts. */
const tick = z.strictObject({ step: text, done: z.boolean(), ...said })

/** A planned change: what must be so before it, the edits, and what the person should know. */
const alteration = z.strictObject({
  title: text,
  conditions: z.array(z.strictObject({ path: z.array(z.string()).min(1), is: z.json() as unknown as z.ZodType<Json>, why: text.optional() })).optional(),
  edits: z.array(editSchema),
  notes: z.array(text).optional(),
  state: z.enum(['planned', 'applied', 'verified', 'taken back']),
  /** The edits that take it back, once it is applied. */
  undo: z.array(editSchema).optional(),
  ...said,
})

/** The schema of a job whose record has parts of the given kinds. */
export function jobSchema(kinds: readonly KindSchema[]) {
  return z.strictObject({
    format: z.literal('loomwright-job'), version: z.literal(FORMAT_VERSION), id, title: text, about: text.optional(),
    /** The revision of the record from which the job's own copy was taken. */
    base: text.optional(),
    vehicle: vehicleSchema,
    record: recordSchema(kinds),
    survey: z.record(id, surveyEntry).optional(),
    alterations: z.record(id, alteration).optional(),
    readings: z.record(id, reading).optional(),
    photos: z.record(id, photo).optional(),
    progress: z.record(id, tick).optional(),
  })
}

export type SurveyEntry = DeepReadonly<z.infer<typeof surveyEntry>>
export type Reading = DeepReadonly<z.infer<typeof reading>>
export type Photo = DeepReadonly<z.infer<typeof photo>>
export type Tick = DeepReadonly<z.infer<typeof tick>>
export type Alteration = Omit<DeepReadonly<z.infer<typeof alteration>>, 'edits' | 'undo'> & {
  readonly edits: readonly Edit[]
  readonly undo?: readonly Edit[]
}

/** One vehicle on the bench: its own copy of the record, what was found, planned, measured and done. */
export interface Job {
  readonly format: 'loomwright-job'
  readonly version: typeof FORMAT_VERSION
  readonly id: string
  readonly title: string
  readonly about?: string
  readonly base?: string
  readonly vehicle: Vehicle
  readonly record: WiringRecord
  readonly survey?: Readonly<Record<string, SurveyEntry>>
  readonly alterations?: Readonly<Record<string, Alteration>>
  readonly readings?: Readonly<Record<string, Reading>>
  readonly photos?: Readonly<Record<string, Photo>>
  readonly progress?: Readonly<Record<string, Tick>>
}
