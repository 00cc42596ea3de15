/** Where a command's words go. */
export interface Out {
  print(text: string): void
  complain(text: string): void
  /** Says how far the work is, once it has taken more than a second. */
  progress(text: string): void
}

/** Standard output and error of the process. */
export function processOut(): Out {
  const started = performance.now()
  return {
    print: (text) => { process.stdout.write(`${text}\n`) },
    complain: (text) => { process.stderr.write(`${text}\n`) },
    progress: (text) => { if (performance.now() - started > 1000) process.stderr.write(`${text}\n`) },
  }
}
