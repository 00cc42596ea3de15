import type { Answer } from './messages.ts'

/** Why a record does not open, everything at once. */
export function Refusal({ refused }: { readonly refused: Extract<Answer, { say: 'refused' }> }) {
  return (
    <main className="refusal" role="alert">
      <h2>{refused.said}</h2>
      <ul>{refused.sentences.map((sentence) => <li key={sentence}>{sentence}</li>)}</ul>
      {refused.choices ? <p className="soft">Say more of the vehicle above, or mend the record.</p> : null}
    </main>
  )
}
