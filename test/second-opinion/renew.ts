// npm run second-opinion: asks the simulator anew and writes its answers. With --check nothing is written; any difference fails.
import { mkdirSync, writeFileSync } from 'node:fs'
import { demoCases, randomCases, wardenCases, type Case, type Found } from './cases.ts'
import { askSimulator, compare, FILES, foundIn, RANDOM_NETWORKS, readRecorded, writeRecorded, type Answer } from './record.ts'
import { simulatorVersion } from './run-simulator.ts'

const isCheck = process.argv.includes('--check')
const simulator = simulatorVersion()
if (simulator === null) {
  console.error('the simulator is not installed: on Debian, apt-get install ngspice')
  process.exit(1)
}

let failed = 0
for (const [name, make] of [['demo', demoCases], ['warden', wardenCases], ['random', (found?: ReadonlyMap<string, Found>) => randomCases(RANDOM_NETWORKS, found)]] as const) {
  const file = FILES[name]
  const before = isCheck ? readRecorded(file) : null
  const found = before ? foundIn(before) : undefined
  const cases: Case[] = make(found)
  const answers = askSimulator(cases, found)
  const compared = cases.map((one, i) => compare(one, answers[i]))
  const lines = [...compared.flatMap(({ differences }) => differences), ...(before ? answersApart(before.answers, answers) : [])]
  for (const line of lines) console.error(line)
  failed += lines.length
  if (!before) {
    mkdirSync(new URL('.', file), { recursive: true })
    writeFileSync(file, writeRecorded({ simulator, answers }))
  }
  const worstV = Math.max(...compared.map((one) => one.worstV)), worstA = Math.max(...compared.map((one) => one.worstA))
  console.log(`${name}: ${cases.length} networks asked of ${simulator}, ${lines.length} differences; worst ${(worstV * 1e3).toFixed(4)} mV, ${(worstA * 1e3).toFixed(4)} mA`)
}
process.exitCode = failed === 0 ? 0 : 1

/** Where the simulator's answers of today differ from those on record by more than a hundredth of a millivolt or of a milliampere. */
function answersApart(recorded: readonly Answer[], answers: readonly Answer[]): string[] {
  if (recorded.length !== answers.length) return [`${recorded.length} answers are on record for ${answers.length} inputs; run npm run second-opinion`]
  return answers.flatMap((answer, i) => {
    const before = recorded[i]
    if (before.digest !== answer.digest) return [`${answer.name}: the recorded answer belongs to another input; run npm run second-opinion`]
    const isSame = areClose(answer.volts, before.volts) && areClose(answer.amps, before.amps)
    return isSame ? [] : [`${answer.name}: the simulator answers otherwise than on record`]
  })
}

function areClose(some: readonly number[], others: readonly (number | null)[]): boolean {
  return some.length === others.length && some.every((value, i) => Math.abs(value - (others[i] ?? NaN)) <= 1e-5)
}
