import type { WireColour } from '../draw/index.ts'
import type { AssumedLine, Facts, Pick } from '../tasks/index.ts'
import type { Shown } from './use-vehicle.ts'

/** What was clicked, in a few facts; then what is to be said of the setting, and what the answer rests on. */
export function FactsPanel({ shown, pick }: { readonly shown: Shown, readonly pick: (pick: Pick | null) => void }) {
  const { facts, notes, opened, lit } = shown
  return (
    <aside className="facts" aria-label="Facts">
      {facts ? <FactsOf facts={facts} close={() => { pick(null) }} /> : <p className="hint">Click or tap a wire or a part to see its volts and amps.</p>}
      {notes.length > 0 ? (
        <section>
          <h2>In this setting</h2>
          {notes.map((note) => <p key={note}>{note}</p>)}
        </section>
      ) : null}
      {facts ? null : <p className="lit">{lit}</p>}
      {opened && opened.assumed.length > 0 ? <Assumed lines={opened.assumed} /> : null}
    </aside>
  )
}

function FactsOf({ facts, close }: { readonly facts: Facts, readonly close: () => void }) {
  return (
    <section>
      <div className="kicker"><h2>{facts.kicker}</h2><button type="button" className="plain-button" onClick={close}>Close</button></div>
      {facts.colour ? <Stripe colour={facts.colour} /> : null}
      <p className="fact-title">{facts.title}</p>
      <p className="soft">{facts.under}</p>
      <dl>
        {facts.rows.map(({ name, said }, i) => <div key={`${name}${i}`}><dt>{name}</dt><dd>{said}</dd></div>)}
      </dl>
      {facts.judgement === '' ? null : <p className="judgement">{facts.judgement}</p>}
      {facts.plain === '' ? null : <p className="soft">{facts.plain}</p>}
    </section>
  )
}

/** The insulation as it looks in the hand. */
function Stripe({ colour: { base, tracers, words } }: { readonly colour: WireColour }) {
  return (
    <svg className="stripe" viewBox="0 0 260 18" preserveAspectRatio="none" role="img" aria-label={words}>
      <rect x="1" y="1" width="258" height="16" rx="8" fill={base === '' ? 'var(--sheet)' : base} stroke="var(--casing)" strokeDasharray={base === '' ? '5 4' : undefined} />
      {[0, 1, 2, 3, 4].map((i) => tracers.map((css, k) => (
        <polygon key={`${i} ${css}`} points={slant(26 + i * 48 + k * (48 / tracers.length))} fill={css} />
      )))}
    </svg>
  )
}

function slant(x: number): string {
  return `${x},16.5 ${x + 9},16.5 ${x + 16},1.5 ${x + 7},1.5`
}

function Assumed({ lines }: { readonly lines: readonly AssumedLine[] }) {
  const count = lines.reduce((sum, { where }) => sum + where.length, 0)
  return (
    <details>
      <summary>{count} values are assumed</summary>
      <ul>
        {lines.map(({ said, where }) => <li key={said}>{said} <span className="soft">{where.length > 3 ? `${where.slice(0, 3).join(', ')} and ${where.length - 3} more` : where.join(', ')}</span></li>)}
      </ul>
    </details>
  )
}
