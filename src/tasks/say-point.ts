import type { Wiring } from '../record/index.ts'

/** A point of the wiring as a person would say it. */
export function sayPoint(wiring: Wiring, at: string): string {
  const [owner, terminal] = at.split(':')
  const part = wiring.parts.get(owner)
  if (part) return `${lowerFirst(part.title)} ${part.terminals.get(terminal ?? '')?.marking ?? ''}`.trim()
  const metal = wiring.metals.get(at)
  if (metal) return metal.title
  return wiring.splices.has(at) ? `splice ${at}` : at
}

export const upperFirst = (said: string) => said.charAt(0).toUpperCase() + said.slice(1)
const lowerFirst = (said: string) => said.charAt(0).toLowerCase() + said.slice(1)
