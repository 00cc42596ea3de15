import { useEffect, useRef } from 'react'
import type { LiveCard } from '../tasks/index.ts'

/** The connection card of the picked part, over the drawing: the controls still turn it live. */
export function CardSheet({ card: { svg, width, height }, close }: { readonly card: LiveCard, readonly close: () => void }) {
  const back = useRef<HTMLButtonElement>(null)
  useEffect(() => { back.current?.focus() }, [])
  return (
    <section className="card" aria-label="Connection card">
      <button ref={back} type="button" className="plain-button" onClick={close}>Back to the drawing</button>
      <div style={{ width, height }} dangerouslySetInnerHTML={{ __html: svg }} />
    </section>
  )
}
