import type { AssumedLine } from '../tasks/index.ts'
import type { Shown } from './use-vehicle.ts'

/** In words below the drawing: what is lit; and folded, what holds of this setting and what the answer rests on. */
export function UnderDrawing({ shown: { lit, notes, opened } }: { readonly shown: Shown }) {
  const assumed = opened?.assumed ?? []
  return (
    <div className="under-drawing">
      <p className="lit" aria-live="polite">{lit}</p>
      {opened ? (
        <details>
          <summary>{sayCount(notes.length, assumed)}</summary>
          <div className="notes" tabIndex={0} role="region" aria-label="Notes and assumptions">
            {notes.map((note) => <p key={note}>{note}</p>)}
            <ul>{assumed.map((line) => <li key={line.said}>{line.said} <span className="soft">{sayWhere(line)}</span></li>)}</ul>
          </div>
        </details>
      ) : null}
    </div>
  )
}

function sayCount(notes: number, assumed: readonly AssumedLine[]): string {
  const values = assumed.reduce((sum, { where }) => sum + where.length, 0)
  const said = [...notes > 0 ? [`${notes} ${notes === 1 ? 'note' : 'notes'} on this setting`] : [], ...values > 0 ? [`${values} assumed ${values === 1 ? 'value' : 'values'}`] : []]
  return said.length === 0 ? 'Nothing is assumed' : said.join(', ')
}

function sayWhere({ where }: AssumedLine): string {
  return where.length > 3 ? `${where.slice(0, 3).join(', ')} and ${where.length - 3} more` : where.join(', ')
}
