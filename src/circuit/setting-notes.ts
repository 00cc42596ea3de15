import { titleOf } from '../record/index.ts'
import type { Network } from './network.ts'
import { noteOverloads } from './overload-notes.ts'
import { engineMode } from './positions.ts'
import type { Setting, Solution } from './solved.ts'
import { RUNS_ON_A } from './standing.ts'

/** What a person must be told of a solution beyond its figures: fuses that have blown, wires that burn, an engine that cannot be running. */
export function noteSolution(network: Network, setting: Setting, solution: Solution): string[] {
  return [...noteStates(network, solution), ...noteBurning(network, solution), ...noteOverloads(network, setting, solution), ...noteDeadEngine(network, setting, solution)]
}

function noteStates({ states, parts }: Network, solution: Solution): string[] {
  return states.flatMap(({ id, part, spec }) => {
    const told = spec.tells?.[solution.states[id]]
    return told === undefined ? [] : [`${parts[part].part.title} (${parts[part].id}) ${told}`]
  })
}

/** Per cent of rated volts at which a lamp's life is minutes at most: by the 13th power of the volts, 1/200 of it. Common practice, no source. */
const BURNS_PERCENT = 150

function noteBurning({ wiring }: Network, { lamps }: Solution): string[] {
  return Object.entries(lamps).filter(([, { percent }]) => percent > BURNS_PERCENT).map(([id, { percent }]) =>
    `${titleOf(id, wiring)} (${id}) gets ${percent.toFixed(0)} % of its rated volts and would burn out`)
}

/** An engine that is said to run while no coil makes sparks: the setting may pass, as when the key is turned off, but cannot last. */
function noteDeadEngine({ elements, wiring }: Network, { engine }: Setting, solution: Solution): string[] {
  const coils = elements.filter(({ spec }) => spec?.sparks)
  if (coils.length === 0 || engineMode(engine, wiring.engine) !== 'running') return []
  const sparks = coils.some(({ id }) => Math.abs(solution.elements[id].amps ?? 0) > RUNS_ON_A)
  return sparks ? [] : ['nothing makes sparks in this setting, so the engine that is taken to run would stop']
}
