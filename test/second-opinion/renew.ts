// npm run second-opinion: asks the simulator anew and writes its answers. With --check nothing is written; any difference fails.
import { mkdirSync, writeFileSync } from 'node:fs'
import { demoCases, randomCases, type Case } from './cases.ts'
import { askSimulator, differences, FILES, RANDOM_NETWORKS, readRecorded, writeRecorded, type Recorded } from './record.ts'
import { simulatorVersion } from './run-simulator.ts'

const isCheck = process.argv.includes('--check')
const simulator = simulatorVersion()
if (simulator === null) {
  console.error('the simulator is not installed: on Debian, apt-get install ngspice')
  process.exit(1)
}

const asked: Readonly<Record<keyof typeof FILES, Case[]>> = { demo: demoCases(), random: randomCases(RANDOM_NETWORKS) }
let failed = 0
for (const [name, file] of Object.entries(FILES)) {
  const cases = asked[name as keyof typeof FILES]
  const answers = askSimulator(cases)
  const apart = cases.flatMap((one, i) => differences(one, answers[i]))
  const stale = isCheck ? answersApart(readRecorded(file), { simulator, answers }) : []
  for (const line of [...apart, ...stale]) console.error(line)
  failed += apart.length + stale.length
  if (!isCheck) {
    mkdirSync(new URL('.', file), { recursive: true })
    writeFileSync(file, writeRecorded({ simulator, answers }))
  }
  console.log(`${name}: ${cases.length} networks asked of ${simulator}, ${apart.length} differences`)
}
process.exitCode = failed === 0 ? 0 : 1

/** Where the simulator's answers of today differ from those on record by more than a hundredth of a millivolt. */
function answersApart(recorded: Recorded, { answers }: Recorded): string[] {
  return answers.flatMap((answer, i) => {
    const before = recorded.answers[i]
    if (before?.digest !== answer.digest) return [`${answer.name}: the recorded answer belongs to another input; run npm run second-opinion`]
    const moved = answer.volts.some((volts, k) => Math.abs(volts - before.volts[k]) > 1e-5)
    return moved ? [`${answer.name}: the simulator answers otherwise than on record`] : []
  })
}
