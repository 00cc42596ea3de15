import type { Wiring } from './wiring.ts'

/** The id of what is inside a part: `head.dip`, or the part's own where it is all there is. */
export function innerId(part: string, inner: string): string {
  return inner === '' ? part : `${part}.${inner}`
}

/** What people call the part that an id is of or inside of; the id itself where no part has it. */
export function titleOf(id: string, { parts }: Pick<Wiring, 'parts'>): string {
  return parts.get(id.split('.')[0])?.title ?? id
}

/** How a message names a part or what is inside it: its title, and the id that a command takes in brackets. */
export function nameOf(id: string, wiring: Pick<Wiring, 'parts'>): string {
  const title = titleOf(id, wiring)
  return title === id ? id : `${title} (${id})`
}
