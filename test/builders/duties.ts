import { solveSetting, type Circuit, type Setting, type SolvedSetting } from '../../src/circuit/index.ts'
import type { Duty } from '../../src/record/index.ts'

/** Every combination of the positions that a duty names; what it does not name is at rest. */
export function settingsOf({ when }: Duty): Setting[] {
  const combinations = Object.entries(when).reduce<readonly Readonly<Record<string, string>>[]>(
    (made, [key, positions]) => made.flatMap((one) => positions.map((position) => ({ ...one, [key]: position }))), [{}])
  return combinations.map(({ engine = 'stopped', ...controls }) => ({ controls, engine: engine as Setting['engine'], battery: 'full', phases: {} }))
}

/** What must be fed has to be so in some phase, what must not in none. Answers a line for each breach. */
export function checkDuty(circuit: Circuit, { must = [], mustNot = [] }: Duty, setting: Setting): string[] {
  const { solved } = solveSetting(circuit, setting, { skipStanding: true })
  const moments = [solved, ...Object.values(solved.phases).flatMap(({ solutions = [] }) => solutions)]
  const most = (name: string) => Math.max(...moments.map((moment) => percentOf(circuit, moment, name)))
  return [
    ...must.filter((name) => { const percent = most(name); return !(percent >= 85 && percent <= (name in solved.lamps ? 108 : 120)) }).map((name) => `${name} is at ${most(name)} %`),
    ...mustNot.filter((name) => !(most(name) < 10)).map((name) => `${name} is at ${most(name)} %, and must not be fed`),
    ...solved.outcome === 'rests' ? [] : ['it chatters'],
  ]
}

/** The lines of every duty of a circuit's vehicle, each with its duty and setting. */
export function brokenDuties(circuit: Circuit): string[] {
  return [...circuit.network.wiring.duties].flatMap(([id, duty]) => settingsOf(duty).flatMap((setting) =>
    checkDuty(circuit, duty, setting).map((what) => `${id}, ${JSON.stringify(setting.controls)} ${setting.engine}: ${what}`)))
}

/**
 * Per cent of rated volts of a lamp, or of a part's loads; those without rated volts count by the system's, a coil behind a ballast
 * by half of them. What pulls is at 100 or at 0.
 */
function percentOf({ network: { wiring, elements } }: Circuit, moment: Pick<SolvedSetting, 'lamps' | 'elements' | 'states'>, name: string): number {
  if (name in moment.lamps) return moment.lamps[name].percent
  const armature = moment.states[`${name}.armature`]
  if (armature !== undefined) return armature === 'pulled' ? 100 : 0
  const usual = wiring.systemV * (wiring.parts.get(name)?.params.ballasted === true ? 0.5 : 1)
  const loads = elements.filter(({ id, does }) => does === 'load' && (id === name || id.startsWith(`${name}.`)))
  return Math.max(...loads.map(({ id, spec }) => 100 * Math.abs(moment.elements[id].volts ?? 0) / (spec?.ratedV ?? usual)))
}
