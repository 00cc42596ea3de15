import type { Layout, Stack } from './layout.ts'
import { findHomes, type Home } from './letter-wires.ts'
import type { Layers } from './layers.ts'
import type { Places } from './place-items.ts'
import { CHANNEL_EDGE, routeChannel, TRACK, type Net, type RoutedChannel } from './route-channel.ts'

/** Widest stretch of a drawing that is lower than its sheet. */
const MOST_STRETCH = 1.8

export function stackLayers(layout: Omit<Layout, 'stack'>, sheetHeight: number): Stack {
  const { layers, measures, places } = layout
  const channels = routeChannels(layers, places)
  const ups = layers.rows.map((row) => Math.max(0, ...row.map((item) => measures[item].up)))
  const downs = layers.rows.map((row) => Math.max(0, ...row.map((item) => measures[item].down)))
  const { homes, zones } = layout.manner.whole ? { homes: [], zones: channels.map(() => 0) } : findHomes(layout, channels, ups, downs)
  const natural = sum(ups) + sum(downs) + sum(zones) + sum(channels.map(({ tracks }) => tracks * TRACK + 2 * CHANNEL_EDGE))
  const spare = Math.max(0, Math.min(sheetHeight - natural, natural * (MOST_STRETCH - 1))) / channels.length
  const stack = { centre: [] as number[], bottom: [] as number[], trackY: [] as number[][] }
  let y = 0
  layers.rows.forEach((_, layer) => {
    stack.centre.push(Math.round(y + ups[layer]))
    y = stack.centre[layer] + downs[layer]
    stack.bottom.push(y)
    if (layer === channels.length) return
    const start = y + zones[layer] + CHANNEL_EDGE + spare * 0.5
    stack.trackY.push(Array.from({ length: channels[layer].tracks }, (_, track) => Math.round(start + (track + 0.5) * TRACK)))
    y += zones[layer] + channels[layer].tracks * TRACK + 2 * CHANNEL_EDGE + spare
  })
  const labels = new Map(homes.map((home) => [home.id, { port: home.port, y: homeY(home, stack, zones, spare), upright: home.upright }]))
  return { ...stack, routes: channels.map(({ byLink }) => byLink), labels }
}

/** The middle of the straight stretch: from above the channel's edge by `over`, downward to `to` below that edge. */
function homeY({ layer, over, to, stretches }: Home, stack: { readonly centre: readonly number[], readonly bottom: readonly number[] }, zones: readonly number[], spare: number): number {
  if (to === null) return stack.centre[layer] + 0.5
  return stack.bottom[layer] - over + (over + to + zones[layer] + spare * (stretches ? 1 : 0.5)) / 2
}

export function routeChannels(layers: Layers, places: Places): RoutedChannel[] {
  return layers.rows.slice(0, -1).map((_, channel) => routeChannel(netsOf(layers, places, channel), columnsOf(layers, places, channel)))
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)

function netsOf(layers: Layers, { portX }: Places, channel: number): Net[] {
  return layers.links.flatMap((link, index) => link.channel !== channel ? [] : [{
    link: index, from: portX[link.upper], to: portX[link.lower],
    fromTop: link.turn !== 'above', toTop: link.turn === 'below',
  }])
}

/** Every x at which a line may stand in a channel. */
function columnsOf(layers: Layers, { portX }: Places, channel: number): number[] {
  return layers.links.flatMap((link) => link.channel === channel ? [portX[link.upper], portX[link.lower]] : [])
}
