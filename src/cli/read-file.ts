import { closeSync, openSync, readSync } from 'node:fs'
import { LARGEST_BYTES } from '../record/index.ts'
import { ArgumentError } from './read-arguments.ts'

/** The text of a record's file; what is not there, too large or not UTF-8 is refused in a sentence. */
export function readText(file: string): string {
  try {
    return decode(file, readBytes(file))
  } catch (error) {
    if (error instanceof ArgumentError) throw error
    const { code } = error as NodeJS.ErrnoException
    if (typeof code !== 'string') throw error
    if (code === 'ENOENT') throw new ArgumentError(`there is no file ${file}`)
    if (code === 'EISDIR') throw new ArgumentError(`${file} is a folder: name the file of a record`)
    throw new ArgumentError(`${file} cannot be read (${code})`)
  }
}

/** Read up to the limit and not beyond it: a pipe or a device tells no size, and a file may grow meanwhile. */
function readBytes(file: string): Uint8Array {
  const handle = openSync(file, 'r')
  try {
    const pieces: Buffer[] = []
    for (let total = 0; total <= LARGEST_BYTES;) {
      const piece = Buffer.allocUnsafe(1 << 20)
      const length = readSync(handle, piece)
      if (length === 0) return Buffer.concat(pieces)
      pieces.push(piece.subarray(0, length))
      total += length
    }
  } finally {
    closeSync(handle)
  }
  throw new ArgumentError(`${file} is too large: a record has at most ${LARGEST_BYTES / 1e6} MB`)
}

/** Zero bytes stand in no text but in one of two bytes a letter. */
function decode(file: string, bytes: Uint8Array): string {
  const isWide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff) || bytes.subarray(0, 4).includes(0)
  if (isWide) throw new ArgumentError(`${file} is not UTF-8 text but looks like UTF-16: save it as UTF-8 and try again`)
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ERR_ENCODING_INVALID_ENCODED_DATA') throw error
    throw new ArgumentError(`${file} is not UTF-8 text: save it as UTF-8 and try again`)
  }
}
