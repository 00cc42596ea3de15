import type { Solution } from '../tasks/index.ts'
import { figure } from './table.ts'

/** Every lamp that is not off, with its per cent of rated volts; empty where all are dark. */
export function showLit(lamps: Solution['lamps']): string {
  const lit = Object.entries(lamps).filter(([, lamp]) => lamp.class !== 'off')
  return lit.map(([id, lamp]) => `${id} at ${figure(lamp.percent, 0)} % of its volts`).join(', ')
}
