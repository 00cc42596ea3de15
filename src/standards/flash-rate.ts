/** One flash: how long the lamp is lit, and how long it is dark after. */
export interface FlashCycle {
  readonly onMs: number
  readonly offMs: number
}

/**
 * Flashes a minute as SAE J945 measures them: the mean of 60,000 / (on + off) of each cycle, which for an uneven pattern is
 * more than the cycles counted over their time.
 */
export function flashRatePerMin(cycles: readonly FlashCycle[]): number {
  if (cycles.length === 0) throw new RangeError('a flash rate needs at least one cycle')
  return cycles.reduce((sum, { onMs, offMs }) => sum + 60_000 / (onMs + offMs), 0) / cycles.length
}
