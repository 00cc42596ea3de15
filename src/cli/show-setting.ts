import { nameOf, type Wiring } from '../record/index.ts'
import type { Setting, SolvedStep } from '../tasks/index.ts'

/** Under what an answer holds: the setting, what the engine moved, then a line for each fault laid on. */
export function showSetting(
  { setting: { controls, engine, battery, phases }, followed, faults }: Pick<SolvedStep, 'setting' | 'followed' | 'faults'>, wiring: Wiring, isChained: boolean,
): string {
  const list = (positions: Setting['controls']) => Object.entries(positions).map(([id, position]) => `${nameOf(id, wiring)} at ${position}`)
  const speed = typeof engine === 'number' ? `at ${engine} rpm` : engine
  const byEngine = list(followed)
  return [
    sayVehicle(wiring),
    `Setting: ${[...list(controls), ...list(phases), `engine ${speed}`, `battery ${battery}`].join(', ')}; other controls at rest.`,
    ...isChained ? ['What the settings before have made stays made if it can.'] : [],
    ...byEngine.length ? [`Moved by the engine: ${byEngine.join(', ')}.`] : [],
    ...faults.map(({ fault, said }) => `Fault laid on: ${said} (${fault}).`),
  ].join('\n')
}

/** Which vehicle it is: the record's title, what was stated of it, its supply. */
function sayVehicle({ title, vehicle, systemV, earth }: Wiring): string {
  const { year, market, options = {}, serials = {} } = vehicle
  const stated = [
    ...year === undefined ? [] : [`of ${year}`], ...market === undefined ? [] : [`market ${market}`], ...Object.entries(serials).map(([series, number]) => `${series} ${number}`),
    ...Object.entries(options).map(([option, isOn]) => `${isOn ? 'with' : 'without'} ${option}`),
  ]
  return `Vehicle: ${[vehicle.title ?? title, ...stated].join(', ')}; ${systemV} V, ${earth === 'none' ? 'insulated return' : `${earth} earth`}.`
}

/** Notes as sentences, a line each. */
export const showNotes = (notes: readonly string[]): string => notes.map((note) => `Note: ${note}.`).join('\n')
