import type { BuildContext, Default } from '../record/index.ts'

const PRACTICE = 'common practice, no source'

/** A default of the trade that no published source states. */
export function practice(value: number, why: string): Default {
  return { value, why, source: PRACTICE }
}

/** A switch contact, 10 mΩ unless the record assumes otherwise. */
export function switchContact(ctx: BuildContext): Default {
  return practice(ctx.assume.contactOhm ?? 0.01, ctx.assume.why ?? 'a switch contact in use')
}

/** A relay's contact, 5 mΩ unless the record assumes otherwise. */
export function relayContact(ctx: BuildContext): Default {
  return practice(ctx.assume.relayContactOhm ?? 0.005, ctx.assume.why ?? 'a relay contact in use')
}

/** A figure that goes with the system's volts: `at12` on 12 V, in proportion to `power` of the volts elsewhere. */
export function bySystem(ctx: BuildContext, at12: number, power: number): number {
  return at12 * (ctx.systemV / 12) ** power
}
