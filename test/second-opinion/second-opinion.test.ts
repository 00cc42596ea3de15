import { describe, expect, it } from 'vitest'
import { demoCases, randomCases, wardenCases } from './cases.ts'
import { compare, digestOf, FILES, foundIn, RANDOM_NETWORKS, readRecorded } from './record.ts'

const demo = readRecorded(FILES.demo), warden = readRecorded(FILES.warden), random = readRecorded(FILES.random)
const asked = [
  { title: 'the demo', recorded: demo, cases: demoCases(foundIn(demo)), least: 40 },
  { title: 'the main demo vehicle', recorded: warden, cases: wardenCases(foundIn(warden)), least: 160 },
  { title: 'generated networks', recorded: random, cases: randomCases(RANDOM_NETWORKS, foundIn(random)), least: 300 },
]

describe.each(asked)('a general circuit simulator, on $title', ({ recorded, cases, least }) => {
  it('agrees on every volt and ampere within 1 mV and 1 mA', () => {
    expect(recorded.answers.length).toBeGreaterThanOrEqual(least)
    expect(recorded.answers.map(({ name }) => name)).toEqual(cases.map(({ name }) => name))
    expect(cases.flatMap((one, i) => compare(one, recorded.answers[i]).differences)).toEqual([])
  })

  it('was asked of just these inputs: after a change of law or record run npm run second-opinion', () => {
    expect(recorded.simulator).toMatch(/^ngspice-/)
    expect(recorded.answers.map(({ digest }) => digest)).toEqual(cases.map(digestOf))
  })

  it('was given the EMFs and regulated resistances of today', () => {
    cases.forEach(({ found }, i) => {
      expect(found.length).toBe(recorded.answers[i].found.length)
      found.forEach((value, k) => { expect(Math.abs(value - recorded.answers[i].found[k])).toBeLessThan(1e-5 * Math.max(1, Math.abs(value))) })
    })
  })
})

describe('the networks asked of the simulator', () => {
  const cases = asked.flatMap((one) => one.cases)

  it('reach 300 nodes, float in places and hold loops of zeros', () => {
    const sizes = asked.at(-1)!.cases.map(({ netlist }) => new Set(netlist.nodeOf.values()).size)
    expect(Math.max(...sizes)).toBeGreaterThan(280)
    expect(Math.max(...sizes)).toBeLessThanOrEqual(300)
    expect(cases.some(({ netlist }) => netlist.floating.size > 0)).toBe(true)
    expect(cases.some(({ netlist }) => netlist.loops.size > 0)).toBe(true)
  })

  // The netlist takes from the product what it assumed, so what it assumes is held against the design's figures here.
  it.each([
    ['a sound joint of 2 mΩ', /^connectors\..*\.ohm$/, 0.002], ['a fixing of 1 mΩ', /^fixings\..*\.ohm$/, 0.001], ['a switch contact of 10 mΩ', /\.rows\.[^.]+\.ohm$/, 0.01],
    ['a relay contact of 5 mΩ', /\.contactOhm$/, 0.005], ['a filament twelve times colder', /\.coldRatio$/, 12], ['2.25 V a cell against charging', /\.counterVPerCell$/, 2.25],
  ])('assume %s', (_, path, value) => {
    const assumed = cases.flatMap(({ solved }) => solved.assumed).filter((one) => path.test(one.path))
    expect([...new Set(assumed.map((one) => one.value))]).toEqual([value])
  })
})
