import * as z from 'zod'
import { recordSchema, type KindSchema } from './schema.ts'

/** The record's shape as JSON Schema, draft 2020-12. It says what a document looks like; what points where, reading checks. */
export function recordJsonSchema(kinds: readonly KindSchema[]): object {
  const schema = z.toJSONSchema(recordSchema(kinds), { target: 'draft-2020-12', io: 'input', unrepresentable: 'any' })
  const { $schema, ...rest } = schema
  return { $schema, title: 'Loomwright record', description: 'The wiring of one vehicle family over all its years and options.', ...rest }
}
