import type { SolvedSetting } from '../circuit/index.ts'
import { drawCard, renderCard } from '../draw/index.ts'
import type { Picked } from './live-facts.ts'
import type { LiveVehicle } from './live-vehicle.ts'

/** A connection card as SVG in the page's tones, with its size in px. */
export interface LiveCard { readonly svg: string; readonly width: number; readonly height: number }

/** Least and most that a card is wide, px: a phone in the hand, and what the eye takes in at arm's length. */
const LEAST = 300, MOST = 720

/** The connection card of a part on a sheet of this width; null for what is no part of the vehicle. */
export function cardOf({ wiring }: LiveVehicle, solved: SolvedSetting, pick: Picked, sheetWidth: number): LiveCard | null {
  const card = pick.kind === 'part' ? drawCard(wiring, pick.id.split('/')[0], solved, Math.min(MOST, Math.max(LEAST, sheetWidth))) : null
  return card && { svg: renderCard(card, 'page'), width: card.width, height: card.height }
}
