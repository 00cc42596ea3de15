// A published example of a relay's contacts, built as a record and answered by the product.
import { expect, test } from 'vitest'
import { relayUsages } from '../../src/standards/index.ts'
import { onOff } from '../builders/circuits.ts'
import { battery, lamp, openPlan } from '../builders/on-battery.ts'
import { fixing, link, part } from '../builders/record.ts'

const { common, normallyOpen, normallyClosed, windingLive, windingEarth } = relayUsages[0]

/** A change-over relay with a lamp on each contact, its winding fed through a fuse of 5 A; some have a diode inside, against the feed. */
function changeOver({ live, earth, diode }: { readonly live: string; readonly earth: string; readonly diode: boolean }) {
  const inside = [link('w-cathode', 'diode:cathode', `relay:${windingLive}`), link('w-anode', 'diode:anode', `relay:${windingEarth}`)]
  const vehicle = openPlan({
    parts: [
      battery({ emfV: 12, ohm: 0.01 }), part('switch', 'control', onOff()), part('fuse', 'fuse', { ratingA: 5, ratingMeans: 'continuous' }),
      part('relay', 'electromagnet', {
        windings: { coil: { from: windingLive, to: windingEarth, ohm: 80 } },
        contacts: { make: { from: common, to: normallyOpen }, break: { from: common, to: normallyClosed!, closed: 'released' } },
      }),
      lamp('made', 21, 12), lamp('broken', 21, 12), ...diode ? [part('diode', 'diode', { ratedA: 1 })] : [],
    ],
    wires: [
      link('w-30', 'battery:+', `relay:${common}`), link('w-87', `relay:${normallyOpen}`, 'made:in'), link('w-87a', `relay:${normallyClosed}`, 'broken:in'),
      link('w-switch', 'battery:+', 'switch:a'), link('w-fuse', 'switch:b', 'fuse:in'), link('w-live', 'fuse:out', `relay:${live}`),
      link('w-earth', `relay:${earth}`, 'body'), ...diode ? inside : [],
    ],
    fixings: [fixing('f-battery', 'battery:-', 'body'), fixing('f-made', 'made:out', 'body'), fixing('f-broken', 'broken:out', 'body')],
  })
  return (position: 'off' | 'on') => {
    const { elements, lamps, states } = vehicle.solve({ controls: { 'switch.p': position } }).solved
    const lit = ['made', 'broken'].filter((id) => lamps[id].class === 'normal')
    return { lit, dark: ['made', 'broken'].filter((id) => lamps[id].percent === 0), coilA: elements['relay.coil'].amps!, fuse: states['fuse.element'] }
  }
}

const asPrinted = { live: '86', earth: '85' }, changedEnds = { live: '85', earth: '86' }

// Source: a magazine photo caption, and a component-maker catalogue 2010/2011, p. 76. At rest 30-87a closed and 30-87 open,
// energised 30-87 closed and 30-87a open. (The lamps' 21 W are common practice, no source.)
test('a relay changes over from 87a to 87', () => {
  const relay = changeOver({ ...asPrinted, diode: false })
  expect(relay('off')).toMatchObject({ lit: ['broken'], dark: ['made'], coilA: 0 })
  expect(relay('on')).toMatchObject({ lit: ['made'], dark: ['broken'], fuse: 'whole' })
  // 12 V over 80 Ω, less what lamp, contacts and fuse lose before it.
  expect(relay('on').coilA).toBeCloseTo(0.15, 2)
})

// Source: the same: winding 86 live, 85 earth; which is which matters only with a diode.
test('winding ends matter only with a diode', () => {
  expect(changeOver({ ...changedEnds, diode: false })('on')).toMatchObject({ lit: ['made'], fuse: 'whole' })
  expect(changeOver({ ...asPrinted, diode: true })('on')).toMatchObject({ lit: ['made'], fuse: 'whole' })
  expect(changeOver({ ...changedEnds, diode: true })('on')).toMatchObject({ lit: ['broken'], fuse: 'blown' })
})
