import { describe, expect, it } from 'vitest'
import { partKinds } from '../../src/parts/index.ts'
import { makeRecord, mustResolve, part, wire } from '../builders/record.ts'
import { measureWires } from '../../src/routes/measure-wires.ts'

const wiring = mustResolve(makeRecord({
  parts: [part('a', 'lamp'), part('b', 'lamp')],
  places: { front: { title: 'Front' }, mid: { title: 'Middle' }, rear: { title: 'Rear' } },
  runs: { r1: { from: 'front', to: 'mid', lengthMm: 900 }, r2: { from: 'mid', to: 'rear', lengthMm: 1400 } },
  looms: {
    main: {
      title: 'Main', points: { p1: {}, p2: {}, p3: {}, p4: {} },
      branches: { b1: { from: 'p1', to: 'p2', lengthMm: 950 }, b2: { from: 'p3', to: 'p2', lengthMm: 1500 }, b3: { from: 'p2', to: 'p4' } },
      lies: { l1: { branch: 'b1', runs: ['r1'] }, l2: { branch: 'b2', runs: ['r2'] } },
    },
  },
  wires: [
    wire('through', 'a:in', 'b:in', { loom: 'main', ends: [{ at: 'a:in', leaves: 'p1', tailMm: 50 }, { at: 'b:in', leaves: 'p3', tailMm: 70 }] }),
    wire('unmeasured', 'a:out', 'b:in', { loom: 'main', ends: [{ at: 'a:out', leaves: 'p1' }, { at: 'b:in', leaves: 'p4' }] }),
    wire('short', 'a:out', 'b:in', { loom: 'main', ends: [{ at: 'a:out', leaves: 'p2', tailMm: 80 }, { at: 'b:in', leaves: 'p2', tailMm: 'unknown' }] }),
    wire('stated', 'a:out', 'b:out', { lengthMm: 321 }), wire('apart', 'a:out', 'b:out', { loom: 'separate', runs: ['r1', 'r2'] }),
    wire('nothing', 'a:out', 'b:out'),
  ],
}), {}, partKinds)
const routes = measureWires(wiring)

describe('length of a wire', () => {
  it('is as its loom was made, with its tails', () => {
    expect(routes.get('through')).toMatchObject({ lengthMm: 950 + 1500 + 120, madeMm: 2570, neededMm: 900 + 1400 + 120, branches: ['b1', 'b2'], runs: ['r1', 'r2'] })
  })

  it('is not known where a branch has no length', () => {
    expect(routes.get('unmeasured')).toMatchObject({ lengthMm: null, madeMm: null, neededMm: null, branches: ['b1', 'b3'] })
    expect(routes.get('unmeasured')?.assumed).toHaveLength(1)
  })

  it('is that of its tails where both ends leave at one point', () => {
    expect(routes.get('short')).toMatchObject({ lengthMm: 80, branches: [] })
    expect(routes.get('short')?.assumed[0]).toMatchObject({ path: 'wires.short.ends.1.tailMm', value: 0 })
  })

  it('is as stated before anything else', () => {
    expect(routes.get('stated')).toMatchObject({ lengthMm: 321, assumed: [] })
  })

  it('of a separate wire is along its runs', () => {
    expect(routes.get('apart')).toMatchObject({ lengthMm: 2300, runs: ['r1', 'r2'] })
  })

  it('is assumed, and said, where nothing tells', () => {
    expect(routes.get('nothing')?.assumed[0]).toMatchObject({ path: 'wires.nothing.lengthMm' })
  })
})
