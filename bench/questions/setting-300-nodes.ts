import { copyCondition, restCondition, settle, type Setting } from '../../src/circuit/index.ts'
import { lampCircuit } from '../lamp-network.ts'
import { medianMicroseconds, type Figure, type Question } from '../question.ts'

const REST: Setting = { controls: {}, engine: 'stopped', battery: 'full', phases: {} }

/** One setting of 304 points with 60 lamps: from a neighbouring setting that differs in one control, and from nothing. */
export const setting300Nodes: Question = {
  name: 'setting-300-nodes',
  ask(): Figure[] {
    const circuit = lampCircuit(60)
    const start = restCondition(circuit, REST)
    const settings = Array.from({ length: 60 }, (_, i): Setting => ({ ...REST, controls: { [`switch${i}.p`]: i % 3 === 0 ? 'on' : 'off' } }))
    const lampV = () => circuit.pointVolts(circuit.network.pointOf.get('lamp1:in') as number)
    settle(circuit, REST, start)
    const expected = lampV()
    const warm = medianMicroseconds(2000, 4000, (i) => { settle(circuit, i % 2 === 0 ? REST : settings[(i >> 1) % 60], start) })
    settle(circuit, REST, start)
    if (Math.abs(lampV() - expected) > 1e-9) throw new Error('a warm start changed the answer')
    const cold = medianMicroseconds(500, 2000, (i) => {
      circuit.forget()
      settle(circuit, settings[i % 60], copyCondition(start))
    })
    return [
      { name: 'setting-300-nodes', value: warm, unit: 'us', goal: 100, better: 'lower' },
      { name: 'setting-300-nodes-cold', value: cold, unit: 'us', goal: 400, better: 'lower' },
    ]
  },
}
