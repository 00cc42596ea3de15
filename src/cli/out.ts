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
    print: (text) => { process.stdout.write(`${text}\n`) },
    complain: (text) => { process.stderr.write(`${text}\n`) },
    progress(text) {
      if (performance.now() - last < 1000) return
      last = performance.now()
      process.stderr.write(`${text}\n`)
    },
  }
}
