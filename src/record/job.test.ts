import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fakeKinds } from '../../test/builders/fake-kinds.ts'
import { sampleRecord } from '../../test/builders/sample-record.ts'
import { readJob, writeJob } from './job.ts'
import type { Job } from './job-schema.ts'
import { mergeJobs } from './merge-jobs.ts'

const job: Job = {
  format: 'loomwright-job', version: 1, id: 'j1', title: 'The green one', base: 'r7', record: sampleRecord(),
  vehicle: { year: 1965, options: { fog: false }, exceptions: [{ item: 'tail', asOf: { year: 1958 }, note: 'swapped' }] },
  survey: {
    's-k1-1': { label: '1', end: 'first', at: 'battery:+', marking: 'B', colour: { base: 'red' }, fitting: 'ring', state: 'brittle', photos: ['p1'], by: 'Kim' },
    's-k1-2': { label: '1', end: 'second', where: 'behind the dash', at: 'unknown', corrects: 's-k1-1' },
  },
  alterations: { a1: { title: 'New lamp', conditions: [{ path: ['parts', 'tail', 'kind'], is: 'lamp' }], edits: [{ kind: 'remove', path: ['wires', 'w13'] }], notes: ['mind the battery'], state: 'planned' } },
  readings: { m1: { from: 'tail:L', to: 'body', quantity: 'volts', value: 11.9, setting: { controls: { 'switch.turn': 'side' }, engine: 'stopped' }, meter: 'digital' } },
  photos: { p1: { digest: 'a'.repeat(64), type: 'image/jpeg' } },
  progress: { t1: { step: 'board.3', done: true } },
}

function problemsAfter(change: (job: any) => void): string[] { // any: the point is to break the shape
  const copy = structuredClone(job)
  change(copy)
  const read = readJob(JSON.stringify(copy), fakeKinds)
  return read.ok ? [] : read.problems.map(({ sentence }) => sentence)
}

test('save then load is the identity', () => {
  expect(readJob(writeJob(job), fakeKinds)).toEqual({ ok: true, job })
})

test('problems of the record, the vehicle and the entries have their path', () => {
  expect(problemsAfter((copy) => { copy.record.wires.w1.loom = 'mian'; copy.readings.m1.value = 'lots' })).toEqual([
    expect.stringMatching(/^readings\.m1\.value: expected a number, or true or false/),
    'record.wires.w1.loom: there is no loom mian; the nearest is main.',
  ])
  expect(problemsAfter((copy) => { copy.vehicle.options = { frog: true }; copy.survey['s-k1-1'].photos = ['p2'] })).toEqual([
    'vehicle.options.frog: expected an option of the record: fog, towbar, found "frog"; the nearest is fog.',
    'survey.s-k1-1.photos.0: expected the id of a photo, found "p2"; the nearest is p1.',
  ])
  expect(problemsAfter((copy) => { copy.record = 3 })).toHaveLength(1)
  expect(problemsAfter((copy) => { copy.version = 2 })).toEqual([expect.stringContaining('newer version')])
})

test('damaged jobs never throw', () => {
  const text = writeJob(job)
  fc.assert(fc.property(fc.nat(text.length), fc.nat(60), fc.string({ maxLength: 3, unit: 'binary' }), (at, cut, more) => {
    const read = readJob(text.slice(0, at) + more + text.slice(at + cut), fakeKinds)
    if (!read.ok) expect(read.count).toBeGreaterThan(0)
  }), { numRuns: 300 })
})

test('what is only added merges to a union', () => {
  const a: Job = { ...job, readings: { ...job.readings, m2: { ...job.readings!.m1, value: 12 } }, title: 'Green' }
  const b: Job = { ...job, readings: { ...job.readings, m3: { ...job.readings!.m1, value: 13 } }, progress: undefined }
  const merged = mergeJobs(job, [{ device: 'a', sequence: 1, job: a }, { device: 'b', sequence: 4, job: b }], fakeKinds)
  expect([Object.keys(merged.job.readings!), merged.job.title, merged.differing, Object.keys(merged.job.progress!)]).toEqual([['m1', 'm2', 'm3'], 'Green', [], ['t1']])
})

test('merging in either order gives the same', () => {
  const copy = fc.record({
    title: fc.constantFrom('x', 'y', job.title), year: fc.constantFrom(1965, 1966),
    ticks: fc.array(fc.tuple(fc.constantFrom('t1', 't2', 't3'), fc.boolean()), { maxLength: 3 }), length: fc.constantFrom(2400, 1, 2),
    state: fc.constantFrom('planned' as const, 'applied' as const, 'verified' as const),
  }).map(({ title, year, ticks, length, state }): Job => ({
    ...job, title, vehicle: { ...job.vehicle, year }, alterations: { a1: { ...job.alterations!.a1, state } },
    record: { ...job.record, wires: { ...job.record.wires, w1: { ...job.record.wires!.w1, lengthMm: length } } },
    progress: { ...job.progress, ...Object.fromEntries(ticks.map(([id, done]) => [id, { step: id, done }])) },
  }))
  fc.assert(fc.property(copy, copy, (a, b) => {
    const [one, other] = [{ device: 'a', sequence: 1, job: a }, { device: 'b', sequence: 1, job: b }]
    const merged = mergeJobs(job, [one, other], fakeKinds)
    const reversed = mergeJobs(job, [other, one], fakeKinds)
    expect([writeJob(reversed.job), reversed.undecided, reversed.differing]).toEqual([writeJob(merged.job), merged.undecided, merged.differing])
    expect(readJob(writeJob(merged.job), fakeKinds).ok).toBe(true)
    const again = mergeJobs(merged.job, [{ ...one, job: merged.job }], fakeKinds)
    expect(writeJob(again.job)).toBe(writeJob(merged.job))
  }))
}, 300_000)
