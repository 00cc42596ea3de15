import { restCondition, settle, solveSetting, type Setting } from '../../src/circuit/index.ts'
import { writeNetlist } from '../../test/second-opinion/netlist.ts'
import { simulatorVersion, timeSimulator } from '../../test/second-opinion/run-simulator.ts'
import { lampCircuit } from '../lamp-network.ts'
import { medianMicroseconds, type Figure, type Question } from '../question.ts'

const REST: Setting = { controls: {}, engine: 'stopped', battery: 'full', phases: {} }

/** How many times the simulator takes for the same network of 304 points and 60 lamps: one process, its reading of the file not counted. */
export const ratioToSimulator: Question = {
  name: 'ratio-to-simulator',
  ask(): Figure[] {
    const figure = (value: number | null): Figure[] => [{ name: 'ratio-to-simulator', value, unit: '1', goal: 60, better: 'higher' }]
    if (simulatorVersion() === null) return figure(null)
    const circuit = lampCircuit(60)
    const { solved, condition } = solveSetting(circuit, REST, { skipStanding: true })
    const { text, nodeOf } = writeNetlist(circuit.network.wiring, { solved, condition, machines: [], regulators: [], engineRpm: 0 })
    // Without the hints that lead it to the answer: the product gets none either.
    const bare = text.replaceAll(/^\.nodeset.*\n/gm, '')
    const contact = new RegExp(`^(R\\d+) ${nodeOf.get('switch1:a') ?? ''} ${nodeOf.get('switch1:b') ?? ''} `, 'm').exec(bare)?.[1]
    if (!contact) throw new Error('the closed switch is not in the simulator\'s input')
    const { us, volts } = timeSimulator(bare, 200, contact)
    for (const [point, node] of nodeOf) {
      const own = solved.voltages[point]
      if (typeof own === 'number' && Math.abs(own - (volts.get(node) ?? NaN)) > 1e-3) throw new Error(`${point} differs from the simulator`)
    }
    const start = restCondition(circuit, REST)
    const settings = Array.from({ length: 60 }, (_, i): Setting => ({ ...REST, controls: { [`switch${i}.p`]: i % 3 === 0 ? 'on' : 'off' } }))
    const own = medianMicroseconds(2000, 4000, (i) => { settle(circuit, i % 2 === 0 ? REST : settings[(i >> 1) % 60], start) })
    return figure(us / own)
  },
}
