import type { Setting, SolvedStep } from '../tasks/index.ts'

/** Under what an answer holds: the setting, then a line for each fault laid on. */
export function showSetting({ controls, engine, battery, phases }: Setting, faults: SolvedStep['faults']): string {
  const named = [...Object.entries(controls), ...Object.entries(phases)].map(([id, position]) => `${id} at ${position}`)
  const speed = typeof engine === 'number' ? `at ${engine} rpm` : engine
  return [
    `Setting: ${[...named, `engine ${speed}`, `battery ${battery}`].join(', ')}; everything else at rest.`,
    ...faults.map(({ fault, said }) => `Fault laid on: ${said} (${fault}).`),
  ].join('\n')
}

/** Notes as sentences, a line each. */
export const showNotes = (notes: readonly string[]): string => notes.map((note) => `Note: ${note}.`).join('\n')
