import type { Question } from './question.ts'
import { allSettingsDemo, allSettingsMain } from './questions/all-settings.ts'
import { coldStart } from './questions/cold-start.ts'
import { growthExponent } from './questions/growth-exponent.ts'
import { ratioToSimulator } from './questions/ratio-to-simulator.ts'
import { refuseHostile } from './questions/refuse-hostile.ts'
import { setting300Nodes } from './questions/setting-300-nodes.ts'

/** Every question, in the order in which it is asked. */
export const questions: readonly Question[] = [setting300Nodes, ratioToSimulator, growthExponent, allSettingsDemo, allSettingsMain, coldStart, refuseHostile]
