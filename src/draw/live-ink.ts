import { innerId } from '../record/index.ts'
import type { SolvedSetting } from '../circuit/index.ts'
import { isStray, liveAt, wireLive } from './live.ts'
import type { PieceLead, Rail, Scene, ScenePiece, SceneWire } from './scene.ts'

/** The amber edge of what has no insulation: the supply rail, fixings, and the leads of the symbols. */
export interface InkLive {
  readonly rail: (rail: Rail) => number
  readonly bare: (wire: SceneWire) => number
  readonly lead: (piece: ScenePiece, lead: PieceLead) => number
}

/** Everything that is live is shown live, whatever it is drawn in. */
export function inkLive(scene: Scene, solved: SolvedSetting | null): InkLive {
  if (!solved) return { rail: () => 0, bare: () => 0, lead: () => 0 }
  const atPoint = new Map<string, number>()
  const widen = (point: string | null, edge: number) => { if (point !== null) atPoint.set(point, Math.max(edge, atPoint.get(point) ?? 0)) }
  const post = scene.rails.find(({ point }) => point !== null)?.point ?? null
  const supply = post === null ? 0 : liveAt(ampsInto(scene, solved, post, 'elements'), [solved.voltages[post]]).edge
  const bare = new Map(scene.wires.filter(({ kind }) => kind === 'fixing').map((wire) => [wire.id, fixingEdge(scene, solved, wire)]))
  for (const wire of scene.wires) for (const end of wire.ends) widen(end, bare.get(wire.id) ?? wireLive(wire, solved).edge)
  return {
    rail: ({ point }) => point === null ? 0 : supply,
    bare: ({ id, kind }) => kind === 'rail' ? supply : bare.get(id) ?? 0,
    lead: ({ part }, { point, element }) => element === null
      ? atPoint.get(point) ?? 0
      : isStray(point, solved) ? 0 : liveAt(solved.elements[innerId(part.id, element)]?.amps ?? 0, [solved.voltages[point]]).edge,
  }
}

/** A fixing carries what the elements and wires at its terminal leave over. */
function fixingEdge(scene: Scene, solved: SolvedSetting, { ends }: SceneWire): number {
  const terminal = ends.find((end) => end !== null && scene.pieces.some(({ part }) => end.startsWith(`${part.id}:`)))
  if (!terminal) return 0
  return liveAt(ampsInto(scene, solved, terminal, 'all'), [solved.voltages[terminal]]).edge
}

/** Amps that leave a point into elements, and into wires where they count. */
function ampsInto(scene: Scene, solved: SolvedSetting, point: string, what: 'elements' | 'all'): number {
  const inElements = scene.pieces.flatMap(({ part, elements }) => {
    const is = [...part.terminals.values()].find(({ id }) => `${part.id}:${id}` === point)?.is
    return elements.map(({ id, from, to }) => (solved.elements[innerId(part.id, id)]?.amps ?? 0) * (from === is ? 1 : to === is ? -1 : 0))
  })
  const inWires = what === 'elements' ? [] : scene.wires.filter(({ kind }) => kind === 'wire')
    .map(({ id, ends }) => (solved.wires[id]?.amps ?? 0) * (ends[0] === point ? 1 : ends[1] === point ? -1 : 0))
  return [...inElements, ...inWires].reduce((sum, amps) => sum + amps, 0)
}
