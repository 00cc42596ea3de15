import { expect, test } from 'vitest'
import { answerText, judgeWords, type Stage } from './answer.ts'
import { damageRecord, makeChance, type Damaged } from './damage.ts'
import { runOn } from './run.ts'

const long = import.meta.env.MODE === 'long'
/** The everyday run repeats its records; the long one begins elsewhere each time, and prints where. */
const FIRST_SEED = long ? Math.floor(Math.random() * 1e9) : 1930
const RECORDS = long ? 20_000 : 500
const COMMANDS = long ? 1000 : 50
const MOST_MS = 3_600_000

const seedsOf = (count: number) => Array.from({ length: count }, (_, i) => FIRST_SEED + i)

/** What is wrong with the answer to one damaged record, with all that is needed to see it again. */
function tell({ seed, how }: Damaged, faults: readonly string[]): string[] {
  return faults.map((fault) => `seed ${seed}, ${how}: ${fault}`)
}

test(`${RECORDS} damaged records from seed ${FIRST_SEED} give an answer or sentences`, () => {
  const stages: Record<Stage, number> = { refused: 0, 'not resolved': 0, solved: 0 }
  const faults = seedsOf(RECORDS).flatMap((seed) => {
    const damaged = damageRecord(seed)
    try {
      const answered = answerText(new TextDecoder('utf-8', { ignoreBOM: true }).decode(damaged.bytes), makeChance(seed))
      stages[answered.stage]++
      return tell(damaged, answered.faults)
    } catch (error) {
      return tell(damaged, [`threw ${String(error)}`])
    }
  })
  expect(faults.slice(0, 20)).toEqual([])
  // The damages reach every stage, or they try nothing.
  for (const count of Object.values(stages)) expect(count).toBeGreaterThan(RECORDS / 25)
}, MOST_MS)

test(`commands on ${COMMANDS} damaged records from seed ${FIRST_SEED} end with 0, 1 or 2`, async () => {
  const faults: string[] = []
  for (const seed of seedsOf(COMMANDS)) {
    const damaged = damageRecord(seed)
    for (const args of [['check'], ['solve', '--year', '1955'], ['solve', '--year', '1965', '--engine', 'idle', '--json'], ['meter', '--year', '1955', '--volts', 'battery:+', 'body']]) {
      faults.push(...tell(damaged, await judgeCommand(damaged.bytes, args)))
    }
  }
  expect(faults.slice(0, 20)).toEqual([])
}, MOST_MS)

async function judgeCommand(bytes: Uint8Array, [command, ...more]: readonly string[]): Promise<string[]> {
  try {
    const { code, printed, said } = await runOn(bytes, command, ...more)
    return [
      ...[0, 1, 2].includes(code) ? [] : [`${command} ends with ${code}`],
      ...code === 2 && said === '' ? [`${command} ends with 2 without a word`] : [],
      ...code < 2 && printed === '' ? [`${command} says nothing`] : [],
      ...judgeWords(said), ...judgeWords(printed), ...code < 2 && /\bNaN\b|\bInfinity\b/.test(printed) ? [`${command} prints no number`] : [],
    ]
  } catch (error) {
    return [`${command} threw ${String(error)}`]
  }
}
