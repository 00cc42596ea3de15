import type { LampResult, SolvedSetting } from '../circuit/index.ts'

/** A lamp that goes on and off with the cycle of a part: which, how fast as a class where that can be told, and its brightest moment. */
export interface Flashing { readonly by: string; readonly rate: string; readonly lit: LampResult }

/** By lamp, those that are lit in one phase of a cycle and off in another. */
export function findFlashing({ phases }: SolvedSetting): ReadonlyMap<string, Flashing> {
  return new Map(Object.entries(phases).flatMap(([by, { rate = '', solutions = [] }]) => Object.keys(solutions.at(0)?.lamps ?? {}).flatMap((lamp) => {
    const moments = solutions.map(({ lamps }) => lamps[lamp])
    const lit = moments.reduce((best, one) => one.light > best.light ? one : best)
    const flashes = lit.class !== 'off' && moments.some((one) => one.class === 'off')
    return flashes ? [[lamp, { by, rate, lit }] as const] : []
  })))
}
