import * as z from 'zod'
import { editSchema, type Edit } from './edit.ts'
import { parseJson } from './parse-json.ts'
import { refuse, type Refused } from './problem.ts'
import { checkShape } from './shape-problems.ts'

/** Short names of devices go into the ids of what is made there. */
export const DEVICE_PATTERN = /^[A-Za-z0-9]{1,12}$/

/** Edits as one device made them: its running number, and the revision of the record that it had before it. */
export interface Envelope {
  readonly device: string
  readonly sequence: number
  readonly base: string
  readonly edits: readonly Edit[]
  /** Who made them and when, for the claims that come of them. */
  readonly by?: string
  readonly when?: string
}

export const envelopeSchema = z.strictObject({
  device: z.string().regex(DEVICE_PATTERN), sequence: z.int().min(0), base: z.string().max(200), edits: z.array(editSchema),
  by: z.string().max(2000).optional(), when: z.string().max(2000).optional(),
})

export type ReadEnvelope = { readonly ok: true; readonly envelope: Envelope } | Refused

/** Reads an envelope that comes from outside, with all its problems. Whether its edits apply is seen when they are applied. */
export function readEnvelope(text: string): ReadEnvelope {
  const parsed = parseJson(text)
  if (!parsed.ok) return refuse([parsed.problem])
  const problems = [...parsed.problems, ...checkShape(parsed.value, envelopeSchema).problems]
  return problems.length > 0 ? refuse(problems) : { ok: true, envelope: parsed.value as Envelope }
}
