import { saidProblem, type Problem } from './problem.ts'

/** What a JSON text should have held where it cannot be read on. */
export type Wanted =
  | 'a value' | 'a key in quotes' | 'a colon' | 'a comma or }' | 'a comma or ]' | 'a closing quote' | 'an escape such as \\n' | 'the end of the text'

/** Why a text is no JSON: line and column, what was expected and found there, and on which line to do what about it. */
export function notJson(text: string, at: number, wanted: Wanted): Problem {
  const { line, column } = positionOf(text, at)
  const received = at >= text.length ? 'the end of the text' : text[at] === '\n' ? 'the end of the line' : quote(excerpt(text, at, 0))
  const { near, deed } = findRemedy(text, at, wanted)
  const where = `in line ${positionOf(text, near).line}, ${quote(excerpt(text, near, BEFORE))}, ${deed}`
  const said = `this is not JSON: line ${line}, column ${column}: expected ${wanted}, found ${received}; ${at < text.length ? where : deed}`
  return saidProblem([], wanted, received, said)
}

export interface Position { readonly line: number; readonly column: number }

/** Both count from one. */
export function positionOf(text: string, at: number): Position {
  let line = 1, start = 0
  for (let end = text.indexOf('\n'); end >= 0 && end < at; end = text.indexOf('\n', start)) {
    line++
    start = end + 1
  }
  return { line, column: at - start + 1 }
}

/** What to do, and the place whose line it is done on. */
interface Remedy { readonly near: number; readonly deed: string }

function findRemedy(text: string, at: number, wanted: Wanted): Remedy {
  if (text.trim() === '') return { near: at, deed: 'the file is empty: open the record that was meant' }
  if (at >= text.length) return { near: at, deed: 'the end of the file is missing, or a bracket or a quote is not closed' }
  if (/^\/[/*]/.test(text.slice(at, at + 2))) return { near: at, deed: 'JSON knows no comments: take it out, or put it into a "note"' }
  if (/[“”„‟«»]/.test(text[at])) return { near: at, deed: 'put straight quotes (") in place of the curly ones' }
  const before = lastMark(text, at)
  const closes = text[at] === '}' || text[at] === ']'
  if (closes && text[before] === ',') return { near: before, deed: 'take out the last comma' }
  if (!wanted.startsWith('a comma')) return { near: wanted === 'a closing quote' ? at - 1 : at, deed: DEEDS[wanted] }
  if (closes) return { near: at, deed: `close with ${wanted.at(-1)} what is open` }
  const isAbove = text.slice(before, at).includes('\n')
  return isAbove ? { near: before, deed: 'put a comma at the end' } : { near: at, deed: 'put a comma before it, or look for a quote too many or too few' }
}

const DEEDS: Readonly<Record<string, string>> = {
  'a colon': 'put a colon between the key and its value', 'a key in quotes': 'put the key in double quotes',
  'a value': 'put a number, a text in double quotes, true, false, null, { or [', 'a closing quote': 'close the text in quotes',
  'an escape such as \\n': 'write the backslash twice', 'the end of the text': 'take out what follows the end of the record',
}

/** The last mark before a place that is no space; 0 where there is none. */
function lastMark(text: string, at: number): number {
  let mark = at - 1
  while (mark > 0 && /\s/.test(text[mark])) mark--
  return Math.max(0, mark)
}

/** Letters of a line that are shown before a place, and after it. */
const BEFORE = 30, AFTER = 40

/** The line around a place, from so many letters before it, without the space at its ends. */
function excerpt(text: string, at: number, before: number): string {
  const start = text.lastIndexOf('\n', at - 1) + 1, end = text.indexOf('\n', at)
  const from = Math.max(start, at - before), to = Math.min(end < 0 ? text.length : end, at + AFTER)
  const [cutBefore, cutAfter] = [before > 0 && from > start, to < (end < 0 ? text.length : end)]
  return `${cutBefore ? '…' : ''}${text.slice(from, to).trim()}${cutAfter ? '…' : ''}`
}

/** Quotes that JSON does not use; letters that cannot be seen are marked. */
const quote = (text: string) => `“${text.replace(/\p{C}/gu, '�')}”`
