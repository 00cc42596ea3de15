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

/** Files that people take for records, by their first bytes: the signatures of PNG, JPEG, GIF, PDF, ZIP and gzip. */
const FILE_KINDS: readonly { readonly begins: readonly number[]; readonly is: string }[] = [
  { begins: [0x89, 0x50, 0x4e, 0x47], is: 'a picture (PNG)' }, { begins: [0xff, 0xd8, 0xff], is: 'a picture (JPEG)' }, { begins: [0x47, 0x49, 0x46, 0x38], is: 'a picture (GIF)' },
  { begins: [0x25, 0x50, 0x44, 0x46], is: 'a PDF' }, { begins: [0x50, 0x4b, 0x03, 0x04], is: 'a ZIP archive, as many office files are' }, { begins: [0x1f, 0x8b], is: 'a compressed file (gzip)' },
]

/** Zero bytes stand in no text but in one of two bytes a letter. */
function decode(file: string, bytes: Uint8Array): string {
  const kind = FILE_KINDS.find(({ begins }) => begins.every((byte, i) => bytes[i] === byte))
  if (kind) throw new ArgumentError(`${file} is no text but ${kind.is}: a record is a file of JSON text`)
  const isWide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff) || bytes.subarray(0, 4).includes(0)
  if (isWide) throw new ArgumentError(`${file} is not UTF-8 text but looks like UTF-16: save it as UTF-8 and try again`)
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ERR_ENCODING_INVALID_ENCODED_DATA') throw error
    throw new ArgumentError(`${file} is not UTF-8 text: save it as UTF-8 and try again`)
  }
}
