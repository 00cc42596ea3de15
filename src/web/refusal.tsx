import type { Refused } from './messages.ts'

/** Why a record does not open, everything at once. */
export function Refusal({ refused }: { readonly refused: Refused }) {
  return (
    <main className="refusal" role="alert">
      <h2>{refused.said}</h2>
      <ul>{refused.sentences.map((sentence) => <li key={sentence}>{sentence}</li>)}</ul>
      <p>{refused.choices ? 'Choose another vehicle above or say more of this one, or mend the record and load this page again.' : 'Mend the record in its file and load this page again.'}</p>
    </main>
  )
}
