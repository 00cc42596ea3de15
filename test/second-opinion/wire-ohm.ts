import type { Wiring } from '../../src/record/index.ts'
import { findConductor } from '../../src/standards/index.ts'

/** Ohms of a wire's copper, with an arithmetic of its own for the length: as stated, else its loom's branches and tails, else its runs. */
export function wireOhm(wiring: Wiring, id: string): number {
  const wire = wiring.wires.get(id)
  if (!wire) throw new Error(`no wire ${id}`)
  if (typeof wire.ohm === 'number') return wire.ohm
  if (wiring.assume.wireOhm !== undefined) return wiring.assume.wireOhm
  return (imperialPerM(wire.sizeStrands) ?? tablePerM(wire)) * (lengthMm(wiring, id) ?? 1000) / 1000
}

/** British imperial strands, number/inches such as 28/.012: 0.0172 Ω·mm²/m × 1.08 for the lay, over their area. */
function imperialPerM(strands: string | undefined): number | null {
  const read = /^(\d+)\/(0?\.\d+)$/.exec(strands ?? '')
  if (!read || Number(read[2]) >= 0.1) return null
  return 0.0172 * 1.08 / (Number(read[1]) * Math.PI / 4 * (25.4 * Number(read[2])) ** 2)
}

function tablePerM(wire: NonNullable<ReturnType<Wiring['wires']['get']>>): number {
  const size = typeof wire.sizeMm2 === 'number' ? { mm2: wire.sizeMm2 } : wire.sizeAwg ? { awg: wire.sizeAwg } : wire.sizeStrands ? { strands: wire.sizeStrands }
    : typeof wire.copperDiameterMm === 'number' ? { diameterMm: wire.copperDiameterMm } : { mm2: 1 }
  const found = findConductor(size, wire.cable === 'unknown' ? undefined : wire.cable)
  if (!found.ok) throw new Error(found.sentence)
  return found.ohmPerM
}

function lengthMm(wiring: Wiring, id: string): number | null {
  const wire = wiring.wires.get(id)!
  if (typeof wire.lengthMm === 'number') return wire.lengthMm
  const loom = wiring.looms.get(wire.loom ?? '')
  const tails = wire.ends.reduce((sum, { tailMm }) => sum + (typeof tailMm === 'number' ? tailMm : 0), 0)
  const path = loom ? pathBetween(loom.branches, wire.ends[0].leaves, wire.ends[1].leaves) : null
  const made = path?.map((branch) => loom!.branches[branch].lengthMm)
  if (made?.every((mm) => typeof mm === 'number')) return tails + made.reduce((a, b) => a + b, 0)
  const runs = loom ? path?.every((branch) => loom.lies.has(branch)) ? path.flatMap((branch) => loom.lies.get(branch)!) : [] : wire.runs ?? []
  const needed = runs.map((run) => wiring.runs.get(run)?.lengthMm)
  return runs.length && needed.every((mm) => typeof mm === 'number') ? tails + needed.reduce((a, b) => a + b, 0) : null
}

/** The only way through a tree, found by walking into every branch. */
function pathBetween(branches: Readonly<Record<string, { from: string; to: string }>>, from: string | undefined, to: string | undefined, came = ''): string[] | null {
  if (from === undefined || to === undefined) return null
  if (from === to) return []
  for (const [id, branch] of Object.entries(branches)) {
    if (id === came || (branch.from !== from && branch.to !== from)) continue
    const rest = pathBetween(branches, branch.from === from ? branch.to : branch.from, to, id)
    if (rest) return [id, ...rest]
  }
  return null
}
