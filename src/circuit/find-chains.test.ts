import { expect, it } from 'vitest'
import { findChains } from './find-chains.ts'

const chainsOf = (pairs: readonly (readonly [number, number])[], last: number, curved: readonly number[] = []) =>
  findChains(Int32Array.from(pairs, ([a]) => a), Int32Array.from(pairs, ([, b]) => b), last, (e) => !curved.includes(e))
    .map(({ from, to, elements, inner }) => ({ from, to, elements: [...elements], inner: [...inner] }))

it('passes through nodes that two elements touch', () => {
  // 3 is the reference; 0 has a branch, 1 and 2 have not.
  expect(chainsOf([[0, 1], [2, 1], [2, 3], [0, 3], [3, 0]], 3)).toEqual([
    { from: 0, to: 3, elements: [0, 1, 2], inner: [1, 2] }, { from: 0, to: 3, elements: [3], inner: [] }, { from: 3, to: 0, elements: [4], inner: [] },
  ])
})

it('stops at an element whose law has to be asked', () => {
  expect(chainsOf([[0, 1], [1, 2], [2, 3]], 3, [1]).map(({ elements }) => elements)).toEqual([[0], [1], [2]])
})

it('never passes the reference, and cuts a ring open', () => {
  expect(chainsOf([[0, 2], [2, 1]], 2).map(({ elements }) => elements)).toEqual([[0], [1]])
  expect(chainsOf([[0, 1], [1, 2], [2, 0]], 3)).toEqual([{ from: 0, to: 0, elements: [0, 1, 2], inner: [1, 2] }])
})
