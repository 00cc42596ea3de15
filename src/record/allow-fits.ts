import * as z from 'zod'

/**
 * The schema of a kind's parameters in which every entry of a map of objects (a row of contacts, a winding, a filament)
 * may have its own `fits`. A kind need not know of it: resolving leaves out what does not fit, and the word with it.
 */
export function allowFits(params: z.ZodObject, fits: z.ZodType): z.ZodObject {
  const shape = Object.entries(params.shape).map(([key, field]) => [key, field as z.ZodType, allowInside(field as z.ZodType, fits)] as const)
  const changed = shape.filter(([, before, after]) => before !== after)
  return changed.length === 0 ? params : z.core.clone(params, { ...params.def, shape: { ...params.shape, ...Object.fromEntries(changed.map(([key, , after]) => [key, after])) } })
}

function allowInside(schema: z.ZodType, fits: z.ZodType): z.ZodType {
  if (schema instanceof z.ZodOptional) {
    const inner = schema.unwrap() as z.ZodType
    const allowed = allowInside(inner, fits)
    return allowed === inner ? schema : described(allowed.optional(), schema.description)
  }
  if (schema instanceof z.ZodObject) return allowFits(schema, fits)
  if (!(schema instanceof z.ZodRecord)) return schema
  const entry = allowInside(schema.valueType as z.ZodType, fits)
  const withFits = entry instanceof z.ZodObject
    ? z.core.clone(entry, { ...entry.def, shape: { ...entry.shape, fits: fits.optional() } }) : entry
  return withFits === schema.valueType ? schema : described(z.core.clone(schema, { ...schema.def, valueType: withFits }), schema.description)
}

/** A schema made anew says of itself what the one it stands for said. */
function described<T extends z.ZodType>(schema: T, description: string | undefined): T {
  return description === undefined ? schema : schema.describe(description)
}
