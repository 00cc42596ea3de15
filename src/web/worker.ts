import type { DrawnGroup } from '../draw/index.ts'
import type { Vehicle } from '../record/index.ts'
import { loadTask, type Before, type LiveVehicle, type Picked, type Setting, type SolvedSetting } from '../tasks/index.ts'
import { AT_START, keepKnown, readStand, readVehicle, writeAddress, type AddressWords, type Known } from './address.ts'
import type { Answer, Ask, Drawn, DrawingSize, OpenedPage, SheetSize, View, Went } from './messages.ts'

/** The vehicle held open here, with the setting last solved and the groups last sent. */
interface Open { live: LiveVehicle; view: View; setting: Setting; solved: SolvedSetting; after: Before; sent: Map<string, string>; pick: Picked | null; card: boolean }

const task = loadTask.liveVehicle()
let text = ''
let sheet: SheetSize = { width: 0, height: 0 }
let open: Open | null = null
let pause: ReturnType<typeof setTimeout> | undefined

/** Rest after the last movement before other standing states are sought, ms. */
const PAUSE_MS = 250
/** How long they are sought at a stretch, ms: a movement waits no longer than that. */
const SLICE_MS = 10

self.onmessage = (event: MessageEvent<Ask>) => { void task.then((tasks) => { answer(tasks, event.data) }).catch((error: unknown) => { say({ say: 'failed', said: error instanceof Error ? error.message : String(error) }) }) }

type Tasks = Awaited<typeof task>

/** Every question is answered, once. */
function answer(tasks: Tasks, asked: Ask): void {
  const before = sheet
  if ('sheet' in asked) sheet = asked.sheet
  switch (asked.ask) {
    case 'open':
      text = asked.text
      open = null
      go(tasks, asked.words)
      return
    case 'choose': openVehicle(tasks, asked.vehicle, (known) => ({ stand: keepKnown(asked.stand, known), ignored: [] })); return
    case 'go': go(tasks, asked.words); return
    default: if (open && !(asked.ask === 'sheet' && isLaidOutFor(open, before))) move(tasks, open, asked)
    else say({ say: 'nothing' })
  }
}

function move(tasks: Tasks, held: Open, asked: Exclude<Ask, { ask: 'open' | 'choose' | 'go' }>): void {
  switch (asked.ask) {
    case 'set': set(tasks, held, asked.setting); return
    case 'view': layOut(tasks, held, asked.view); return
    case 'sheet': layOut(tasks, held, held.view); return
    case 'pick': pickUp(tasks, held, asked); return
    case 'find': say({ say: 'found', found: tasks.findByWords(held.live.wiring, asked.words) })
  }
}

function say(answered: Answer): void {
  self.postMessage(answered)
}

// --- opening a vehicle, and going back to one ---

/** To what an address says; the vehicles of the record must be known before it can be read. */
function go(tasks: Tasks, words: AddressWords): void {
  const opened = open ? { ok: true as const, live: open.live } : tasks.openLive(text, null, sheet)
  const choices = opened.ok ? opened.live.choices : opened.choices
  if (choices === null) {
    openVehicle(tasks, null, () => ({ stand: AT_START, ignored: [] }))
    return
  }
  const first = tasks.firstVehicle(choices)
  const { vehicle, ignored, rest } = readVehicle(words, first, choices)
  const find = (known: Known): Went => {
    const { stand, ignored: unknown } = readStand(rest, known)
    return { stand, ignored: [...ignored, ...unknown] }
  }
  if (open && isSame(vehicle, open.live.vehicle, first)) goTo(tasks, open, find(knownOf(tasks, open.live)))
  else openVehicle(tasks, vehicle, find, opened.ok && isSame(vehicle, opened.live.vehicle, first) ? opened : undefined)
}

function isSame(a: Vehicle, b: Vehicle, first: Vehicle): boolean {
  return writeAddress(a, first, AT_START) === writeAddress(b, first, AT_START)
}

/** What stands there, of the vehicle that is open. */
function goTo(tasks: Tasks, held: Open, went: Went): void {
  const { setting, pick, card, ...view } = went.stand
  solve(tasks, held, setting)
  held.pick = pick
  held.card = card
  draw(tasks, held, view)
  sayOpened(tasks, held, went)
}

function sayOpened(tasks: Tasks, held: Open, went: Went): void {
  say({ say: 'opened', opened: describe(tasks, held), went, drawn: readDrawn(tasks, held) })
  seekStanding(tasks)
}

function openVehicle(tasks: Tasks, vehicle: Vehicle | null, find: (known: Known) => Went, opened = tasks.openLive(text, vehicle, sheet)): void {
  if (!opened.ok) {
    open = null
    clearTimeout(pause)
    const { ok: _, ...refused } = opened
    say({ say: 'refused', refused: { ...refused, first: refused.choices ? tasks.firstVehicle(refused.choices) : {} } })
    return
  }
  const { live } = opened
  const went = find(knownOf(tasks, live))
  const { setting, pick, card, ...view } = went.stand
  open = { live, view: AT_START, setting, ...tasks.solveLive(live, setting), sent: new Map(), pick, card }
  if (view.circuit !== null || view.whole) draw(tasks, open, view)
  sayOpened(tasks, open, went)
}

function knownOf(tasks: Tasks, live: LiveVehicle): Known {
  return { axes: tasks.panelAxes(live), circuits: live.scene.circuits, has: (pick) => tasks.hasPicked(live, pick) }
}

function describe(tasks: Tasks, held: Open): OpenedPage {
  const { live } = held
  const { wiring, record, scene, vehicle, choices } = live
  const poles = { negative: 'negative earth', positive: 'positive earth', none: 'insulated return' }[wiring.earth]
  return {
    title: wiring.vehicle.title ?? record.title, under: [wiring.vehicle.year, `${wiring.systemV} V, ${poles}`, `${wiring.wires.size} wires`].filter(Boolean).join(' · '),
    size: sizeOf(held), axes: tasks.panelAxes(live), turns: live.circuit.network.hasEngine,
    vehicle, first: tasks.firstVehicle(choices), choices, assumed: tasks.sayAssumed(live), circuits: scene.circuits, checks: tasks.listChecks(live),
  }
}

/** A drawing to be read that is higher than the sheet was and is does not change with the sheet's height. */
function isLaidOutFor({ live: { scene }, view: { whole } }: Open, before: SheetSize): boolean {
  return !whole && sheet.width === before.width && scene.height > Math.max(sheet.height, before.height)
}

function sizeOf({ live: { scene: { width, height, letter } }, view: { whole } }: Open): DrawingSize {
  return { width, height, letter, whole }
}

// --- movements ---

function layOut(tasks: Tasks, held: Open, view: View): void {
  draw(tasks, held, view)
  say({ say: 'laid out', size: sizeOf(held), axes: tasks.panelAxes(held.live), drawn: readDrawn(tasks, held) })
}

/** Lays the drawing out anew, so that all of it is to be sent. */
function draw(tasks: Tasks, held: Open, { circuit, whole }: View): void {
  held.view = { circuit, whole }
  held.live = tasks.redrawLive(held.live, sheet, circuit, whole)
  held.sent.clear()
}

function set(tasks: Tasks, held: Open, setting: Setting): void {
  solve(tasks, held, setting)
  say({ say: 'drawn', drawn: readDrawn(tasks, held) })
  seekStanding(tasks)
}

function solve(tasks: Tasks, held: Open, setting: Setting): void {
  held.setting = setting
  const { solved, after } = tasks.solveLive(held.live, setting, isAtRest(setting) ? null : held.after)
  held.solved = solved
  held.after = after
}

/** With nothing set and the engine stopped everything begins anew. */
function isAtRest({ controls, engine }: Setting): boolean {
  return Object.keys(controls).length === 0 && engine === 'stopped'
}

function pickUp(tasks: Tasks, held: Open, { pick, card }: Pick<Open, 'pick' | 'card'>): void {
  held.pick = pick
  held.card = card
  say({ say: 'facts', ...explain(tasks, held) })
}

/** Facts of what is picked, and its card where that is asked for. */
function explain(tasks: Tasks, { live, solved, pick, card }: Open): Pick<Drawn, 'facts' | 'card'> {
  return {
    facts: pick ? tasks.factsOf(live, solved, pick) : null,
    card: pick && card ? tasks.cardOf(live, solved, pick, sheet.width - CARD_EDGES) : null,
  }
}

/** Room left and right of a card on its sheet, px. */
const CARD_EDGES = 32

/** Other standing states take longer to find than the drawing may wait: they are sought a little at a time, until something else is asked. */
function seekStanding(tasks: Tasks): void {
  clearTimeout(pause)
  if (!open) return
  const { live } = open
  const search = tasks.seekLive(live, open)
  const goOn = () => {
    const until = performance.now() + SLICE_MS
    let step = search.next()
    while (!step.done && performance.now() < until) step = search.next()
    if (step.done) say({ say: 'notes', notes: tasks.sayOfSetting(live, step.value) })
    else pause = setTimeout(goOn)
  }
  pause = setTimeout(goOn, PAUSE_MS)
}

function readDrawn(tasks: Tasks, held: Open): Drawn {
  const { live, solved, sent } = held
  const groups = tasks.drawLive(live, solved).filter((group) => isNew(group, sent))
  for (const { kind, id, svg } of groups) sent.set(`${kind} ${id}`, svg)
  return {
    groups, positions: solved.positions, lit: tasks.sayLit(live, solved), notes: tasks.sayOfSetting(live, solved),
    ...explain(tasks, held),
  }
}

function isNew({ kind, id, svg }: DrawnGroup, sent: ReadonlyMap<string, string>): boolean {
  return sent.get(`${kind} ${id}`) !== svg
}
