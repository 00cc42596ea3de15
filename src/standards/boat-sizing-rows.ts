import type { Sourced } from './sources.ts'

/** The printed AWG for a 3 % drop at 12 V, beside circular mils = 10.75 x amps x feet / 0.36 V and the size that needs. */
export interface BoatSizingRow extends Sourced {
  readonly roundTripFt: number
  readonly currentA: number
  readonly printedAwg: string
  readonly formulaCircularMils: number
  readonly formulaAwg: string
}

/**
 * Boat wire for 3 % at 12 V. Printed rows of 25 and 30 ft look interchanged and are left out, as are those above 50 ft. Where
 * print and formula differ, the print is one size larger.
 */
export const boatSizingRows: readonly BoatSizingRow[] = [
  { roundTripFt: 10, currentA: 5, printedAwg: '18', formulaCircularMils: 1493, formulaAwg: '18', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 10, currentA: 10, printedAwg: '14', formulaCircularMils: 2986, formulaAwg: '14', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 10, currentA: 15, printedAwg: '12', formulaCircularMils: 4479, formulaAwg: '12', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 10, currentA: 20, printedAwg: '12', formulaCircularMils: 5972, formulaAwg: '12', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 10, currentA: 25, printedAwg: '10', formulaCircularMils: 7465, formulaAwg: '10', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 10, currentA: 30, printedAwg: '10', formulaCircularMils: 8958, formulaAwg: '10', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 10, currentA: 40, printedAwg: '8', formulaCircularMils: 11944, formulaAwg: '8', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 10, currentA: 50, printedAwg: '8', formulaCircularMils: 14931, formulaAwg: '8', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 10, currentA: 60, printedAwg: '6', formulaCircularMils: 17917, formulaAwg: '6', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 10, currentA: 70, printedAwg: '6', formulaCircularMils: 20903, formulaAwg: '6', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 10, currentA: 80, printedAwg: '6', formulaCircularMils: 23889, formulaAwg: '6', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 10, currentA: 90, printedAwg: '4', formulaCircularMils: 26875, formulaAwg: '4', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 10, currentA: 100, printedAwg: '4', formulaCircularMils: 29861, formulaAwg: '4', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 5, printedAwg: '16', formulaCircularMils: 2240, formulaAwg: '16', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 10, printedAwg: '12', formulaCircularMils: 4479, formulaAwg: '12', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 15, printedAwg: '10', formulaCircularMils: 6719, formulaAwg: '10', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 20, printedAwg: '10', formulaCircularMils: 8958, formulaAwg: '10', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 25, printedAwg: '8', formulaCircularMils: 11198, formulaAwg: '8', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 30, printedAwg: '8', formulaCircularMils: 13438, formulaAwg: '8', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 40, printedAwg: '6', formulaCircularMils: 17917, formulaAwg: '6', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 50, printedAwg: '6', formulaCircularMils: 22396, formulaAwg: '6', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 60, printedAwg: '4', formulaCircularMils: 26875, formulaAwg: '4', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 70, printedAwg: '4', formulaCircularMils: 31354, formulaAwg: '4', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 80, printedAwg: '4', formulaCircularMils: 35833, formulaAwg: '4', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 90, printedAwg: '2', formulaCircularMils: 40312, formulaAwg: '4', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 15, currentA: 100, printedAwg: '2', formulaCircularMils: 44792, formulaAwg: '2', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 5, printedAwg: '14', formulaCircularMils: 2986, formulaAwg: '14', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 10, printedAwg: '10', formulaCircularMils: 5972, formulaAwg: '12', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 15, printedAwg: '10', formulaCircularMils: 8958, formulaAwg: '10', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 20, printedAwg: '8', formulaCircularMils: 11944, formulaAwg: '8', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 25, printedAwg: '6', formulaCircularMils: 14931, formulaAwg: '8', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 30, printedAwg: '6', formulaCircularMils: 17917, formulaAwg: '6', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 40, printedAwg: '6', formulaCircularMils: 23889, formulaAwg: '6', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 50, printedAwg: '4', formulaCircularMils: 29861, formulaAwg: '4', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 60, printedAwg: '4', formulaCircularMils: 35833, formulaAwg: '4', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 70, printedAwg: '2', formulaCircularMils: 41806, formulaAwg: '2', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 80, printedAwg: '2', formulaCircularMils: 47778, formulaAwg: '2', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 90, printedAwg: '2', formulaCircularMils: 53750, formulaAwg: '2', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 20, currentA: 100, printedAwg: '2', formulaCircularMils: 59722, formulaAwg: '2', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 5, printedAwg: '10', formulaCircularMils: 5972, formulaAwg: '12', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 10, printedAwg: '8', formulaCircularMils: 11944, formulaAwg: '8', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 15, printedAwg: '6', formulaCircularMils: 17917, formulaAwg: '6', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 20, printedAwg: '6', formulaCircularMils: 23889, formulaAwg: '6', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 25, printedAwg: '4', formulaCircularMils: 29861, formulaAwg: '4', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 30, printedAwg: '4', formulaCircularMils: 35833, formulaAwg: '4', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 40, printedAwg: '2', formulaCircularMils: 47778, formulaAwg: '2', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 50, printedAwg: '2', formulaCircularMils: 59722, formulaAwg: '2', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 60, printedAwg: '1', formulaCircularMils: 71667, formulaAwg: '1', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 70, printedAwg: '0', formulaCircularMils: 83611, formulaAwg: '1', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 80, printedAwg: '0', formulaCircularMils: 95556, formulaAwg: '0', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 90, printedAwg: '2/0', formulaCircularMils: 107500, formulaAwg: '2/0', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 40, currentA: 100, printedAwg: '2/0', formulaCircularMils: 119444, formulaAwg: '2/0', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 5, printedAwg: '10', formulaCircularMils: 7465, formulaAwg: '10', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 10, printedAwg: '6', formulaCircularMils: 14931, formulaAwg: '8', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 15, printedAwg: '6', formulaCircularMils: 22396, formulaAwg: '6', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 20, printedAwg: '4', formulaCircularMils: 29861, formulaAwg: '4', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 25, printedAwg: '4', formulaCircularMils: 37326, formulaAwg: '4', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 30, printedAwg: '2', formulaCircularMils: 44792, formulaAwg: '2', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 40, printedAwg: '2', formulaCircularMils: 59722, formulaAwg: '2', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 50, printedAwg: '1', formulaCircularMils: 74653, formulaAwg: '1', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 60, printedAwg: '0', formulaCircularMils: 89583, formulaAwg: '0', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 70, printedAwg: '2/0', formulaCircularMils: 104514, formulaAwg: '0', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 80, printedAwg: '2/0', formulaCircularMils: 119444, formulaAwg: '2/0', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 90, printedAwg: '4/0', formulaCircularMils: 134375, formulaAwg: '3/0', source: 'boat-flipbook-2022', status: 'read' },
  { roundTripFt: 50, currentA: 100, printedAwg: '4/0', formulaCircularMils: 149306, formulaAwg: '3/0', source: 'boat-flipbook-2022', status: 'read' },
]
