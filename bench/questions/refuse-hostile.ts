import { partKinds } from '../../src/parts/index.ts'
import { readRecord } from '../../src/record/index.ts'
import type { Figure, Question } from '../question.ts'

const fill = (open: string, item: string, count: number, close: string) => `${open}${Array.from({ length: count }, () => item).join(',')}${close}`

/** Texts near the largest size that hold no record: a million keys, lists in lists, one long text, numbers, one key again and again. */
const TEXTS: readonly (() => string)[] = [
  () => `{${Array.from({ length: 1e6 }, (_, i) => `"k${i}":1`).join(',')}}`,
  () => fill('[', '[[[[[]]]]]', 1.8e6, ']'),
  () => fill('"', '\\n', 6e6, '"'),
  () => fill('[', '1.5', 3e6, ']'),
  () => fill('{', '"kkkkkk":1', 1.1e6, '}'),
]

/** The longest time in which any of them is refused. */
export const refuseHostile: Question = {
  name: 'refuse-hostile',
  ask(): Figure[] {
    const times = TEXTS.map((make) => {
      const text = make()
      const started = performance.now()
      if (readRecord(text, partKinds).ok) throw new Error('a text that is no record was read')
      return performance.now() - started
    })
    return [{ name: 'refuse-hostile', value: Math.max(...times), unit: 'ms', goal: 1000, better: 'lower' }]
  },
}
