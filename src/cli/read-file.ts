import { readFileSync, statSync } from 'node:fs'
import { ArgumentError } from './read-arguments.ts'

/** Largest record that is read, bytes. */
const MOST_BYTES = 20 * 1024 * 1024

/** The text of a record's file; what is not there, too large or not UTF-8 is refused in a sentence. */
export function readText(file: string): string {
  try {
    const { size } = statSync(file)
    if (size > MOST_BYTES) throw new ArgumentError(`${file} has ${size} bytes; a record has at most ${MOST_BYTES}`)
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(readFileSync(file))
  } catch (error) {
    if (error instanceof ArgumentError) throw error
    const { code } = error as NodeJS.ErrnoException
    if (typeof code !== 'string') throw error
    if (code === 'ENOENT') throw new ArgumentError(`there is no file ${file}`)
    if (code === 'ERR_ENCODING_INVALID_ENCODED_DATA') throw new ArgumentError(`${file} is not UTF-8 text: save it as UTF-8 and try again`)
    throw new ArgumentError(`${file} cannot be read (${code})`)
  }
}
