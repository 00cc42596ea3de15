import { useCallback, useEffect } from 'react'
import type { Vehicle } from '../record/index.ts'
import type { Setting } from '../tasks/index.ts'
import { splitAddress, writeAddress, type Stand } from './address.ts'
import type { VehicleHold } from './use-vehicle.ts'

export interface Addressed {
  move(change: Partial<Stand>): void
  choose(vehicle: Vehicle): void
}

/** Movements and choices that stand in the address, so that they can be kept, sent and gone back to. */
export function useAddress({ shown: { opened, refused, stand }, move, choose, go }: VehicleHold): Addressed {
  useEffect(() => {
    const { search } = location
    const back = () => {
      // Another record, which only a fresh page can tell from this one.
      if (location.search !== search) location.reload()
      else go(splitAddress(location.hash))
    }
    addEventListener('popstate', back)
    return () => { removeEventListener('popstate', back) }
  }, [go])
  return {
    move: useCallback((change) => {
      if (change.setting) performance.mark('control')
      if (move(change) && opened) keepAddress(writeAddress(opened.vehicle, opened.first, { ...stand, ...change }), isSmall(stand, change))
    }, [move, opened, stand]),
    choose: useCallback((vehicle) => {
      const first = (opened ?? refused)?.first
      if (first) keepAddress(writeAddress(vehicle, first, stand), false)
      choose(vehicle)
    }, [choose, opened, refused, stand]),
  }
}

/** Each movement is a step to go back by, but for the small ones. */
function keepAddress(hash: string, isSmall: boolean): void {
  const address = `${location.pathname}${location.search}${hash}`
  if (isSmall) history.replaceState(null, '', address)
  else history.pushState(null, '', address)
}

/** A lever that slides, and what is looked at more closely. */
function isSmall({ setting }: Stand, change: Partial<Stand>): boolean {
  return change.setting ? isSlide(setting, change.setting) : Object.keys(change).every((key) => key === 'pick' || key === 'card')
}

function isSlide(before: Setting, after: Setting): boolean {
  const moved = Object.keys(after.controls).filter((key) => before.controls[key] !== after.controls[key])
  return moved.length === 1 && typeof before.controls[moved[0]] === 'number'
}
