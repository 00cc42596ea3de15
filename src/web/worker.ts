import { wireColour, wireSize, type DrawnGroup } from '../draw/index.ts'
import { loadTask, type Before, type LiveVehicle, type Pick, type Setting, type SolvedSetting } from '../tasks/index.ts'
import type { Answer, Ask, Drawn, Findable, OpenedPage, SheetSize } from './messages.ts'

/** The vehicle held open here, with the setting last solved and the groups last sent. */
interface Open { live: LiveVehicle; setting: Setting; solved: SolvedSetting; before: Before | null; after: Before; sent: Map<string, string>; pick: Pick | null }

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
    case 'sheet': layOut(tasks, asked.sheet, asked.circuit); return
    case 'set': set(tasks, asked.setting); return
    case 'pick': pickUp(tasks, asked.pick)
  }
}

function say(answered: Answer): void {
  self.postMessage(answered)
}

function openVehicle(tasks: Tasks, { text, vehicle, sheet, setting }: Extract<Ask, { ask: 'open' }>): void {
  const opened = tasks.openLive(text, vehicle, sheet)
  if (!opened.ok) {
    open = null
    say({ say: 'refused', said: opened.said, sentences: opened.sentences, vehicle: opened.vehicle, choices: opened.choices })
    return
  }
  const { live } = opened
  open = { live, setting, ...tasks.solveLive(live, setting), before: null, sent: new Map(), pick: null }
  say({ say: 'opened', opened: describe(tasks, live), drawn: draw(tasks, open) })
  seekStanding(tasks)
}

function describe(tasks: Tasks, live: LiveVehicle): OpenedPage {
  const { wiring, record, scene } = live
  const poles = { negative: 'negative earth', positive: 'positive earth', none: 'insulated return' }[wiring.earth]
  return {
    title: wiring.vehicle.title ?? record.title, under: [wiring.vehicle.year, `${wiring.systemV} V, ${poles}`, `${wiring.wires.size} wires`].filter(Boolean).join(' · '),
    width: scene.width, height: scene.height, axes: tasks.panelAxes(live),
    turns: live.circuit.network.hasEngine,
    vehicle: live.vehicle, choices: live.choices, assumed: tasks.sayAssumed(live), findable: findables(live), circuits: scene.circuits,
  }
}

function findables({ wiring }: LiveVehicle): Findable[] {
  const parts = [...wiring.parts.values()].map(({ id, title }): Findable => ({ pick: { kind: 'part', id }, said: title }))
  const wires = [...wiring.wires.values()].map((wire): Findable => ({
    pick: { kind: 'wire', id: wire.id }, said: `Wire ${wire.tag ?? wire.id}, ${wireColour(wire).words}${wireSize(wire) === '' ? '' : `, ${wireSize(wire)}`}`,
  }))
  return [...parts.sort((a, b) => a.said < b.said ? -1 : 1), ...wires]
}

function layOut(tasks: Tasks, sheet: SheetSize, circuit: string | null): void {
  if (!open) return
  open.live = tasks.redrawLive(open.live, sheet, circuit)
  open.sent.clear()
  say({ say: 'laid out', width: open.live.scene.width, height: open.live.scene.height, drawn: draw(tasks, open) })
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

function pickUp(tasks: Tasks, pick: Pick | null): void {
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
