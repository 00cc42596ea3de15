import { restCondition, settle, type Setting } from '../../src/circuit/index.ts'
import { lampCircuit } from '../lamp-network.ts'
import { leastMicroseconds, type Figure, type Question } from '../question.ts'

const WIRES = [100, 300, 1000, 5000]
const REST: Setting = { controls: {}, engine: 'stopped', battery: 'full', phases: {} }

/** How the cost of one setting grows with the number of wires: the slope of log time over log wires by least squares. */
export const growthExponent: Question = {
  name: 'growth-exponent',
  ask(): Figure[] {
    const points = WIRES.map((wires) => {
      const circuit = lampCircuit(Math.round(wires / 4))
      const start = restCondition(circuit, REST)
      const calls = Math.ceil(60_000 / wires)
      const us = leastMicroseconds(7, calls, () => { circuit.forget(); settle(circuit, REST, start) })
      return [Math.log(circuit.network.wiring.wires.size), Math.log(us)] as const
    })
    return [{ name: 'growth-exponent', value: slopeOf(points), unit: '1', goal: 1.2, better: 'lower' }]
  },
}

function slopeOf(points: readonly (readonly [number, number])[]): number {
  const mean = (pick: (p: readonly [number, number]) => number) => points.reduce((sum, p) => sum + pick(p), 0) / points.length
  const mx = mean(([x]) => x), my = mean(([, y]) => y)
  return mean(([x, y]) => (x - mx) * (y - my)) / mean(([x]) => (x - mx) ** 2)
}
