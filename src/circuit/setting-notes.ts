import type { Network } from './network.ts'
import { engineMode } from './positions.ts'
import type { Setting, Solution } from './solved.ts'
import { RUNS_ON_A } from './standing.ts'

/** What a person must be told of a solution beyond its figures: fuses that have blown, an engine that cannot be running. */
export function noteSolution(network: Network, setting: Setting, solution: Solution): string[] {
  return [...noteStates(network, solution), ...noteDeadEngine(network, setting, solution)]
}

function noteStates({ states, parts }: Network, solution: Solution): string[] {
  return states.flatMap(({ id, part, spec }) => {
    const told = spec.tells?.[solution.states[id]]
    return told === undefined ? [] : [`${parts[part].part.title} (${parts[part].id}) ${told}`]
  })
}

/** An engine that is said to run while no coil makes sparks: the setting may pass, as when the key is turned off, but cannot last. */
function noteDeadEngine({ elements, wiring }: Network, { engine }: Setting, solution: Solution): string[] {
  const coils = elements.filter(({ spec }) => spec?.sparks)
  if (coils.length === 0 || engineMode(engine, wiring.engine) !== 'running') return []
  const sparks = coils.some(({ id }) => Math.abs(solution.elements[id].amps ?? 0) > RUNS_ON_A)
  return sparks ? [] : ['no ignition coil is fed in this setting, so the engine that is taken to run would stop']
}
