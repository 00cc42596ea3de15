import { wireColour, type DrawnGroup } from '../draw/index.ts'
import { wireSize } from '../record/index.ts'
import { loadTask, type Before, type LiveVehicle, type Picked, type Setting, type SolvedSetting } from '../tasks/index.ts'
import { readSetting, readVehicle, type AddressWords, type ReadSetting } from './address.ts'
import type { Answer, Ask, Drawn, DrawingSize, Findable, OpenedPage, View } from './messages.ts'

/** The vehicle held open here, with the setting last solved and the groups last sent. */
interface Open { live: LiveVehicle; setting: Setting; solved: SolvedSetting; before: Before | null; after: Before; sent: Map<string, string>; pick: Picked | null }

const task = loadTask.liveVehicle()
let open: Open | null = null
let pause: ReturnType<typeof setTimeout> | undefined

/** Rest after the last movement before other standing states are sought, ms. */
const PAUSE_MS = 250

self.onmessage = (event: MessageEvent<Ask>) => { void task.then((tasks) => { answer(tasks, event.data) }) }

type Tasks = Awaited<typeof task>

function answer(tasks: Tasks, asked: Ask): void {
  switch (asked.ask) {
    case 'open': openVehicle(tasks, asked); return
    case 'sheet': layOut(tasks, asked.view); return
    case 'set': set(tasks, asked.setting); return
    case 'pick': pickUp(tasks, asked.pick)
  }
}

function say(answered: Answer): void {
  self.postMessage(answered)
}

function openVehicle(tasks: Tasks, asked: Extract<Ask, { ask: 'open' }>): void {
  const { opened, words, ignored } = openFrom(tasks, asked)
  if (!opened.ok) {
    open = null
    say({ say: 'refused', said: opened.said, sentences: opened.sentences, vehicle: opened.vehicle, choices: opened.choices })
    return
  }
  const { live } = opened
  const read = asked.from.kind === 'chosen' ? keepKnown(tasks, live, asked.from.setting) : readSetting(words, tasks.panelAxes(live))
  const { setting } = read
  open = { live, setting, ...tasks.solveLive(live, setting), before: null, sent: new Map(), pick: null }
  say({ say: 'opened', opened: { ...describe(tasks, live), setting, ignored: [...ignored, ...read.ignored] }, drawn: draw(tasks, open) })
  seekStanding(tasks)
}

interface OpenedFrom { readonly opened: ReturnType<Tasks['openLive']>; readonly words: AddressWords; readonly ignored: readonly string[] }

/** The vehicle as chosen; or the one that the address means, for which the record's choices must be known first. */
function openFrom(tasks: Tasks, { text, from, view }: Extract<Ask, { ask: 'open' }>): OpenedFrom {
  if (from.kind === 'chosen') return { opened: tasks.openLive(text, from.vehicle, view.sheet), words: [], ignored: [] }
  const opened = tasks.openLive(text, null, view.sheet)
  const choices = opened.ok ? opened.live.choices : opened.choices
  if (choices === null || from.words.length === 0) return { opened, words: [], ignored: [] }
  const { vehicle, ignored, rest } = readVehicle(from.words, tasks.firstVehicle(choices), choices)
  const isOther = rest.length < from.words.length && ignored.length < from.words.length
  return { opened: isOther ? tasks.openLive(text, vehicle, view.sheet) : opened, words: rest, ignored }
}

/** Controls that another vehicle has too stay where they are. */
function keepKnown(tasks: Tasks, live: LiveVehicle, setting: Setting): ReadSetting {
  const known = new Set(tasks.panelAxes(live).map(({ key }) => key))
  return { setting: { ...setting, controls: Object.fromEntries(Object.entries(setting.controls).filter(([key]) => known.has(key))) }, ignored: [] }
}

function describe(tasks: Tasks, live: LiveVehicle): Omit<OpenedPage, 'setting' | 'ignored'> {
  const { wiring, record, scene } = live
  const poles = { negative: 'negative earth', positive: 'positive earth', none: 'insulated return' }[wiring.earth]
  return {
    title: wiring.vehicle.title ?? record.title, under: [wiring.vehicle.year, `${wiring.systemV} V, ${poles}`, `${wiring.wires.size} wires`].filter(Boolean).join(' · '),
    size: sizeOf(live, false), axes: tasks.panelAxes(live), first: tasks.firstVehicle(live.choices), turns: live.circuit.network.hasEngine,
    vehicle: live.vehicle, choices: live.choices, assumed: tasks.sayAssumed(live), findable: findables(live), circuits: scene.circuits,
  }
}

function sizeOf({ scene: { width, height, letter } }: LiveVehicle, whole: boolean): DrawingSize {
  return { width, height, letter, whole }
}

function findables({ wiring }: LiveVehicle): Findable[] {
  const parts = [...wiring.parts.values()].map(({ id, title }): Findable => ({ pick: { kind: 'part', id }, said: title }))
  const wires = [...wiring.wires.values()].map((wire): Findable => ({
    pick: { kind: 'wire', id: wire.id }, said: `Wire ${wire.id}, ${wireColour(wire).words}${wireSize(wire) === '' ? '' : `, ${wireSize(wire)}`}`,
  }))
  return [...parts.sort((a, b) => a.said < b.said ? -1 : 1), ...wires]
}

function layOut(tasks: Tasks, { sheet, circuit, whole }: View): void {
  if (!open) return
  open.live = tasks.redrawLive(open.live, sheet, circuit, whole)
  open.sent.clear()
  say({ say: 'laid out', size: sizeOf(open.live, whole), drawn: draw(tasks, open) })
}

function set(tasks: Tasks, setting: Setting): void {
  if (!open) return
  open.setting = setting
  open.before = isAtRest(setting) ? null : open.after
  const { solved, after } = tasks.solveLive(open.live, setting, open.before)
  open.solved = solved
  open.after = after
  say({ say: 'drawn', drawn: draw(tasks, open) })
  seekStanding(tasks)
}

/** With nothing set and the engine stopped everything begins anew. */
function isAtRest({ controls, engine }: Setting): boolean {
  return Object.keys(controls).length === 0 && engine === 'stopped'
}

function pickUp(tasks: Tasks, pick: Picked | null): void {
  if (!open) return
  open.pick = pick
  say({ say: 'facts', facts: pick ? tasks.factsOf(open.live, open.solved, pick) : null })
}

/** Other standing states take longer to find than the drawing may wait. */
function seekStanding(tasks: Tasks): void {
  clearTimeout(pause)
  pause = setTimeout(() => {
    if (!open) return
    say({ say: 'notes', notes: tasks.sayOfSetting(open.live, tasks.solveLive(open.live, open.setting, open.before, true).solved) })
  }, PAUSE_MS)
}

function draw(tasks: Tasks, { live, solved, sent, pick }: Open): Drawn {
  const groups = tasks.drawLive(live, solved).filter((group) => isNew(group, sent))
  for (const { kind, id, svg } of groups) sent.set(`${kind} ${id}`, svg)
  return {
    groups, positions: solved.positions, lit: tasks.sayLit(live, solved), notes: tasks.sayOfSetting(live, solved),
    facts: pick ? tasks.factsOf(live, solved, pick) : null,
  }
}

function isNew({ kind, id, svg }: DrawnGroup, sent: ReadonlyMap<string, string>): boolean {
  return sent.get(`${kind} ${id}`) !== svg
}
