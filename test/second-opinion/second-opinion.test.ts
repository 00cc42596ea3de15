import { describe, expect, it } from 'vitest'
import { demoCases, randomCases } from './cases.ts'
import { differences, FILES, RANDOM_NETWORKS, readRecorded } from './record.ts'

const foundIn = (recorded: ReturnType<typeof readRecorded>) => new Map(recorded.answers.map(({ name, found }) => [name, found]))

describe('a general circuit simulator', () => {
  it('agrees on the demo within 1 mV and 1 mA', () => {
    const recorded = readRecorded(FILES.demo)
    const cases = demoCases(foundIn(recorded))
    expect(cases.length).toBeGreaterThanOrEqual(40)
    expect(recorded.answers.map(({ name }) => name)).toEqual(cases.map(({ name }) => name))
    expect(cases.flatMap((one, i) => differences(one, recorded.answers[i]))).toEqual([])
  })

  it('agrees on 300 generated networks within 1 mV and 1 mA', () => {
    const recorded = readRecorded(FILES.random)
    const cases = randomCases(RANDOM_NETWORKS, foundIn(recorded))
    expect(cases.flatMap((one, i) => differences(one, recorded.answers[i]))).toEqual([])
    expect(Math.max(...cases.map(({ netlist }) => netlist.nodeOf.size))).toBeGreaterThan(200)
    expect(cases.some(({ netlist }) => netlist.floating.size > 0)).toBe(true)
  })

  it('was asked of just these inputs: after a change of law or record run npm run second-opinion', () => {
    for (const [file, cases] of [[FILES.demo, demoCases()], [FILES.random, randomCases(RANDOM_NETWORKS)]] as const) {
      expect(readRecorded(file).answers.map(({ digest }) => digest)).toEqual(cases.map(({ netlist }) => netlist.digest))
    }
  })

  it('was given the EMFs and regulated resistances of today', () => {
    const recorded = readRecorded(FILES.demo)
    demoCases().forEach(({ found }, i) => {
      found.forEach((value, k) => { expect(Math.abs(value - recorded.answers[i].found[k])).toBeLessThan(1e-5 * Math.max(1, Math.abs(value))) })
    })
  })
})
