/** Each task is loaded when it is called for: a command or a page pays for its own task alone. */
export const loadTask = {
  openVehicle: async () => (await import('./open-vehicle.ts')).openVehicle,
  solveVehicle: async () => (await import('./solve-vehicle.ts')).solveVehicle,
  checkEditions: async () => (await import('./check-editions.ts')).checkEditions,
  checkVehicle: async () => (await import('./check-vehicle.ts')).checkVehicle,
  meterVehicle: async () => (await import('./meter-vehicle.ts')).meterVehicle,
  liveVehicle: async () => ({ ...await import('./live-vehicle.ts'), ...await import('./live-facts.ts'), ...await import('./vehicle-choices.ts'), ...await import('./find-by-words.ts'), ...await import('./live-checks.ts'), ...await import('./live-card.ts') }),
} as const

export type { CheckedEdition, CheckedEditions } from './check-editions.ts'
export type { CheckedWiring } from './check-vehicle.ts'
export type { Findable } from './find-by-words.ts'
export type { LiveCard } from './live-card.ts'
export type { Check } from './live-checks.ts'
export type { Facts, Picked } from './live-facts.ts'
export type { Before, LiveVehicle, OpenedLive, PanelAxis, SettingNotes } from './live-vehicle.ts'
export type { MeterAnswer, MeterReading, MeterWords } from './meter-vehicle.ts'
export type { OpenedVehicle } from './open-vehicle.ts'
export type { SettingWords } from './read-setting.ts'
export type { NameRefusal } from './refusal.ts'
export type { SolvedStep, SolvedSteps, SolveWords } from './solve-vehicle.ts'
export type { AssumedLine } from '../record/index.ts'
export type { Setting, Solution, SolvedSetting } from '../circuit/index.ts'
export type { VehicleChoices } from './vehicle-choices.ts'
