import { nearest } from '../record/index.ts'

/** Words from outside that name nothing in this vehicle: what was wrong, and the valid names. */
export interface NameRefusal { readonly sentence: string; readonly valid: readonly string[] }

/** Either what was read, or why it could not be. */
export type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly refusal: NameRefusal }

export function given<T>(value: T): Read<T> {
  return { ok: true, value }
}

/** Refuses `word` as a name of `what`, with the nearest valid name if one is near, or the vehicles it is for if it is only not in this one. */
export function refuseName(
  what: string, word: string, valid: Iterable<string>, leftOut?: ReadonlyMap<string, string>,
): { readonly ok: false; readonly refusal: NameRefusal } {
  const names = [...valid]
  const elsewhere = leftOut?.get(word.split(/[.:]/)[0])
  if (elsewhere !== undefined) return refuseForm(`"${word}" is not in this vehicle: the record has it for ${elsewhere}`, names)
  const near = nearest(word, names)
  return { ok: false, refusal: { sentence: `there is no ${what} "${word}"${near === undefined ? '' : `; the nearest is ${near}`}`, valid: names } }
}

export function refuseForm(sentence: string, valid: readonly string[] = []): { readonly ok: false; readonly refusal: NameRefusal } {
  return { ok: false, refusal: { sentence, valid } }
}

/** All values, or the first refusal. */
export function readAll<S, T>(items: readonly S[], read: (item: S) => Read<T>): Read<T[]> {
  const values: T[] = []
  for (const item of items) {
    const one = read(item)
    if (!one.ok) return one
    values.push(one.value)
  }
  return given(values)
}
