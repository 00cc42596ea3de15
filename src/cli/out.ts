/** Where a command's words go. */
export interface Out {
  print(text: string): void
  complain(text: string): void
  /** Says how far the work is, once a second at the most, and never in the first. */
  progress(text: string): void
}

/** Standard output and error of the process. */
export function processOut(): Out {
  let last = performance.now()
  return {
    print: (text) => { process.stdout.write(`${plain(text)}\n`) },
    complain: (text) => { process.stderr.write(`${plain(text)}\n`) },
    progress(text) {
      if (performance.now() - last < 1000) return
      last = performance.now()
      process.stderr.write(`${text}\n`)
    },
  }
}

/** A title of a record must not steer the terminal: control characters as JSON escapes, which in JSON mean the same. */
export function plain(text: string): string {
  return text.replace(/[^\P{Cc}\n\t]/gu, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`)
}
