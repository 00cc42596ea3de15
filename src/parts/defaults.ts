import type { BuildContext, Default } from '../record/index.ts'

const PRACTICE = 'common practice, no source'

/** A default of the trade that no published source states. */
export function practice(value: number, why: string): Default {
  return { value, why, source: PRACTICE }
}

/** What the record's owner assumes, or a default of the trade. */
export function recordOr(ctx: BuildContext, key: 'contactOhm' | 'relayContactOhm' | 'jointOhm' | 'fuseOhm', usual: number, why: string): Default {
  const value = ctx.assume[key]
  return value === undefined ? practice(usual, why) : { value, why: ctx.assume.why ?? 'assumed throughout', source: 'the record' }
}

/** A switch contact, 10 mΩ unless the record assumes otherwise. */
export function switchContact(ctx: BuildContext): Default {
  return recordOr(ctx, 'contactOhm', 0.01, 'a switch contact in use')
}

/** A relay's contact, 5 mΩ unless the record assumes otherwise. */
export function relayContact(ctx: BuildContext): Default {
  return recordOr(ctx, 'relayContactOhm', 0.005, 'a relay contact in use')
}

/** A figure that goes with the system's volts: `at12` on 12 V, in proportion to `power` of the volts elsewhere. */
export function bySystem(ctx: BuildContext, at12: number, power: number): number {
  return at12 * (ctx.systemV / 12) ** power
}
