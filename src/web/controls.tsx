import { memo, type ReactNode } from 'react'
import type { PanelAxis, Setting } from '../tasks/index.ts'
import { AT_REST } from './address.ts'
import type { OpenedPage } from './messages.ts'

interface ControlsProps {
  readonly opened: OpenedPage | null
  readonly positions: Readonly<Record<string, string | number>>
  readonly setting: Setting
  readonly move: (change: Partial<Setting>) => void
}

/** Every control of the vehicle, from the record alone; then the engine and the battery. */
export const Controls = memo(function Controls({ opened, positions, setting, move }: ControlsProps) {
  if (!opened) return <section className="controls" aria-label="Controls" />
  return (
    <section className="controls" aria-label="Controls">
      <h2>Turn the controls</h2>
      <Axes axes={opened.axes} of="" positions={positions} setting={setting} move={move} />
      {opened.turns ? (
        <Steps legend="Engine" name="engine" steps={ENGINE} now={String(setting.engine)} choose={(engine) => { move({ engine: engine as Setting['engine'] }) }} />
      ) : null}
      <Steps legend="Battery" name="battery" steps={BATTERY} now={setting.battery} choose={(battery) => { move({ battery: battery as Setting['battery'] }) }} />
      <button type="button" className="plain-button all-rest" onClick={() => { move(AT_REST) }}>Put all at rest</button>
    </section>
  )
})

interface AxesProps extends Pick<ControlsProps, 'positions' | 'setting' | 'move'> {
  readonly axes: readonly PanelAxis[]
  /** Told apart from the same control elsewhere on the page. */
  readonly of: string
}

/** Controls to be turned, one after the other. */
export function Axes({ axes, of, positions, setting, move }: AxesProps) {
  const set = (key: string, position: string | number | null) => {
    const others = Object.fromEntries(Object.entries(setting.controls).filter(([other]) => other !== key))
    move({ controls: position === null ? others : { ...others, [key]: position } })
  }
  return axes.map((axis) => <Axis key={axis.key} of={of} axis={axis} position={setting.controls[axis.key] ?? positions[axis.key] ?? axis.spec.rest} isSet={axis.key in setting.controls} set={set} />)
}

const ENGINE: readonly Step[] = [
  { value: 'stopped', said: 'stopped' }, { value: 'stopped-open', said: 'stopped, points open' },
  { value: 'cranking', said: 'cranking' }, { value: 'idle', said: 'idle' }, { value: 'cruise', said: 'cruise' },
]
const BATTERY: readonly Step[] = [{ value: 'full', said: 'full' }, { value: 'low', said: 'low' }]
const BY_ITSELF = ' '

interface AxisProps { readonly of: string, readonly axis: PanelAxis, readonly position: string | number, readonly isSet: boolean, readonly set: (key: string, position: string | number | null) => void }

function Axis({ of, axis: { key, title, spec }, position, isSet, set }: AxisProps) {
  const name = of + key
  if (spec.range) return <Slider title={title} range={spec.range} position={Number(position)} choose={(value) => { set(key, value) }} />
  const steps = spec.positions.map((value): Step => ({ value, said: value }))
  if (!spec.follows) return <Steps legend={title} name={name} steps={steps} now={String(position)} choose={(value) => { set(key, value) }} note={noteOf(spec)} />
  const byItself: Step = { value: BY_ITSELF, said: 'as the engine' }
  return (
    <Steps legend={title} name={name} steps={[byItself, ...steps]} now={isSet ? String(position) : BY_ITSELF} note={noteOf(spec)}
      choose={(value) => { set(key, value === BY_ITSELF ? null : value) }} />
  )
}

function noteOf({ movedBy }: PanelAxis['spec']): string {
  return movedBy === 'driver' || movedBy === 'other' ? '' : `by ${movedBy}`
}

interface Step { readonly value: string, readonly said: string }
interface StepsProps { readonly legend: string, readonly name: string, readonly steps: readonly Step[], readonly now: string, readonly note?: string, readonly choose: (value: string) => void }

/** One choice of several: the arrow keys go through them, as everywhere else. */
function Steps({ legend, name, steps, now, note, choose }: StepsProps) {
  return (
    <fieldset className="control">
      <Legend title={legend} note={note} />
      <div className="steps">
        {steps.map(({ value, said }) => (
          <label key={value}>
            <input type="radio" name={name} value={value} checked={value === now} onChange={() => { choose(value) }} />
            <span>{said}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}

function Legend({ title, note }: { readonly title: string, readonly note?: string }): ReactNode {
  return <legend>{title}{note ? <span className="note">{note}</span> : null}</legend>
}

interface SliderProps { readonly title: string, readonly range: { readonly from: number, readonly to: number, readonly unit?: string }, readonly position: number, readonly choose: (value: number) => void }

function Slider({ title, range: { from, to, unit }, position, choose }: SliderProps) {
  const [least, most] = [Math.min(from, to), Math.max(from, to)]
  return (
    <label className="control slider">
      <span className="legend">{title} <output>{Math.round(position * 100) / 100}{unit ? ` ${unit}` : ''}</output></span>
      <input type="range" min={least} max={most} step={(most - least) / 100} value={position} onChange={(event) => { choose(Number(event.target.value)) }} />
    </label>
  )
}
