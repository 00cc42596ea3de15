import { expect, test } from 'vitest'
import { nearestAhead } from './sheet.ts'

const at = (x: number, y: number) => ({ x, y, width: 10, height: 10 })
const areas = [at(0, 0), at(100, 5), at(60, 80), at(0, 200), at(300, 0)]

test('an arrow goes to what lies nearest ahead, and less to what lies aside', () => {
  expect(nearestAhead(areas[0], areas, 'ArrowRight')).toBe(1)
  expect(nearestAhead(areas[0], areas, 'ArrowDown')).toBe(3)
  expect(nearestAhead(areas[1], areas, 'ArrowRight')).toBe(4)
  expect(nearestAhead(areas[4], areas, 'ArrowLeft')).toBe(1)
  expect(nearestAhead(areas[0], areas, 'ArrowUp')).toBe(-1)
  expect(nearestAhead(areas[0], areas, 'Tab')).toBe(-1)
})
