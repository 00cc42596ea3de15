const KEY = 'opened file'

interface Kept { readonly name: string; readonly text: string }

/** Keeps the file for a reload of this tab; answers whether there was room for it. */
export function keepFile(name: string, text: string): boolean {
  try {
    sessionStorage.setItem(KEY, JSON.stringify({ name, text } satisfies Kept))
    return true
  } catch (error) {
    if (!(error instanceof DOMException)) throw error
    sessionStorage.removeItem(KEY)
    return false
  }
}

/** The text of the file of that name, or null where another has been opened since, or none. */
export function readFile(name: string): string | null {
  const kept = sessionStorage.getItem(KEY)
  if (kept === null) return null
  const { name: last, text } = JSON.parse(kept) as Kept
  return last === name ? text : null
}
