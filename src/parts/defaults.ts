import type { BuildContext, Default } from '../record/index.ts'
import { nameSource, partDefaults, type PartDefault } from '../standards/index.ts'

const PRACTICE = 'common practice, no source'

/** A default of the trade that no published source states. */
export function practice(value: number, why: string): Default {
  return { value, why, source: PRACTICE }
}

/** A default figure of the standards' table; times `scale` where the unit differs. */
export function standard(row: PartDefault, scale = 1): Default {
  return { value: row.value * scale, why: row.item, source: nameSource(row.source) }
}

const MILLI = 1e-3

/** What the record's owner assumes, or a default of the trade. */
export function recordOr(ctx: BuildContext, key: 'contactOhm' | 'relayContactOhm' | 'jointOhm' | 'fuseOhm', usual: Default): Default {
  const value = ctx.assume[key]
  return value === undefined ? usual : { value, why: ctx.assume.why ?? 'assumed throughout', source: 'the record' }
}

/** A switch contact, unless the record assumes otherwise. */
export function switchContact(ctx: BuildContext): Default {
  return recordOr(ctx, 'contactOhm', standard(partDefaults.switchContactMohm, MILLI))
}

/** A sound joint, unless the record assumes otherwise. */
export function soundJoint(ctx: BuildContext): Default {
  return recordOr(ctx, 'jointOhm', standard(partDefaults.jointMohm, MILLI))
}

/** A relay's contact, unless the record assumes otherwise. */
export function relayContact(ctx: BuildContext): Default {
  return recordOr(ctx, 'relayContactOhm', standard(partDefaults.relayContactMohm, MILLI))
}

/** A figure that goes with the system's volts: `at12` on 12 V, in proportion to `power` of the volts elsewhere. */
export function bySystem(ctx: BuildContext, at12: number, power: number): number {
  return at12 * (ctx.systemV / 12) ** power
}
