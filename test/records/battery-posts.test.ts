import { expect, test } from 'vitest'
import { onOff } from '../builders/circuits.ts'
import { fixing, link, makeRecord, mustResolve, part, years } from '../builders/record.ts'
import { partKinds } from '../../src/parts/index.ts'
import { resolveVehicle } from '../../src/record/index.ts'

const parts = [part('battery', 'battery', { ohm: 0.01 }), part('lamp', 'lamp', { powerW: 21 }), part('fuse', 'fuse')]
const live = (post: string) => link('live', `battery:${post}`, 'fuse:in')
const rest = [link('w2', 'fuse:out', 'lamp:in')]
const onWing = { metals: ['wing', 'body'], fixings: [fixing('lamp-earth', 'lamp:out', 'body'), fixing('bolts', 'wing', 'body')] }

test('a battery against the supply is a conflict that names the way', () => {
  const record = makeRecord({ ...onWing, supply: '12-', parts, wires: [...rest, live('-'), link('strap', 'battery:+', 'wing')] })
  const resolved = resolveVehicle(record, {}, partKinds)
  expect(resolved.ok ? [] : resolved.conflicts.map(({ at, what }) => [at.join('.'), what])).toEqual([['parts.battery', 'battery reversed']])
  expect(resolved.ok ? '' : resolved.conflicts[0].sentence).toMatch(/battery:\+ that leads to metal \(by strap\), and battery:- does not .*: turn the battery round, or correct the supply\.$/)
})

test.each([['12-', '+', '-'], ['6+', '-', '+']] as const)('a battery as the supply %s says is none', (supply, hot, earthed) => {
  const record = makeRecord({ ...onWing, supply, parts, wires: [...rest, live(hot), link('strap', `battery:${earthed}`, 'wing')] })
  expect(mustResolve(record, {}, partKinds).shorted).toEqual([])
})

test('two batteries in series are none', () => {
  const record = makeRecord({
    ...onWing, supply: '12-', parts: [...parts, part('second', 'battery', { ohm: 0.01 })],
    wires: [...rest, link('strap', 'battery:-', 'body'), link('link', 'battery:+', 'second:-'), link('live', 'second:+', 'fuse:in')],
  })
  expect(resolveVehicle(record, {}, partKinds).ok).toBe(true)
})

test('editions of a lead that share a year short the battery', () => {
  const record = makeRecord({
    ...onWing, supply: '12-', parts,
    wires: [...rest, link('early', 'battery:-', 'fuse:in', { fits: years(1950, 1954) }), link('late', 'battery:+', 'fuse:in', { fits: years(1954) }), link('strap', 'battery:-', 'wing')],
  })
  expect(mustResolve(record, { year: 1955 }, partKinds).shorted).toEqual([])
  const [shorted] = mustResolve(record, { year: 1954 }, partKinds).shorted
  expect(shorted).toMatchObject({ part: 'battery', through: ['late', 'early'] })
  expect(shorted.sentence).toBe('battery (battery) is short-circuited, from post to post through late (1954 and later), early (1950 to 1954) with no load between: '
    + 'leave it off, and let the years of late and early not overlap: both are in the vehicles of 1954')
})

test('a short that no years explain asks where its ways lead', () => {
  const record = makeRecord({ ...onWing, parts, wires: [...rest, live('+'), link('strap', 'battery:-', 'wing'), link('stray', 'fuse:in', 'body')] })
  expect(mustResolve(record, {}, partKinds).shorted[0].sentence).toMatch(/through live, stray, bolts, strap with no load between: leave it off, and see where each of these really leads/)
})

test('a lamp without its earth has an end that nothing is joined to', () => {
  const wires = [...rest, live('+'), link('strap', 'battery:-', 'wing')]
  const record = makeRecord({ ...onWing, parts, wires })
  const lost = makeRecord({ ...onWing, fixings: [fixing('bolts', 'wing', 'body')], parts, wires })
  expect(mustResolve(record, {}, partKinds).unjoined).toEqual([])
  expect(mustResolve(lost, {}, partKinds).unjoined).toEqual(['lamp:out'])
})

test('a live bus bar and a master switch in the earth lead are none', () => {
  const record = makeRecord({
    ...onWing, metals: ['wing', 'body', 'bar'], supply: '12-', parts: [...parts, part('master', 'control', onOff())],
    wires: [...rest, link('lead', 'battery:+', 'bar'), link('feed', 'bar', 'fuse:in'), link('earth', 'battery:-', 'master:a'), link('strap', 'master:b', 'wing')],
  })
  expect(resolveVehicle(record, {}, partKinds).ok).toBe(true)
})

test('no post is judged by a supply that is not certain', () => {
  const supply = { one: { systemV: 12, earth: 'negative' }, other: { systemV: 12, earth: 'positive' } } as const
  const record = makeRecord({ ...onWing, supply, parts, wires: [...rest, live('-'), link('strap', 'battery:+', 'wing')] })
  const resolved = resolveVehicle(record, {}, partKinds)
  expect(resolved.ok ? [] : resolved.conflicts.map(({ what }) => what)).toEqual(['several supplies'])
})

test('the conflict names the supply of this vehicle alone', () => {
  const supply = { early: { systemV: 12, earth: 'negative', fits: years(1950, 1955) }, late: { systemV: 12, earth: 'negative', fits: years(1956) } } as const
  const record = makeRecord({ ...onWing, supply, parts, wires: [...rest, live('-'), link('strap', 'battery:+', 'wing')] })
  const resolved = resolveVehicle(record, { year: 1950 }, partKinds)
  expect(resolved.ok ? [] : resolved.conflicts.map(({ fits }) => fits.map(({ of }) => of))).toEqual([['supply.early']])
})
