/** Anything that JSON can hold. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json }

export type JsonObject = { readonly [key: string]: Json }

/** The keys that lead to a value of the document, list positions as digits: `['wires', 'w1', 'ends', '0', 'at']`. */
export type Path = readonly string[]

/** The path as a person reads it: `wires.w1.ends.0.at`; the document itself is `the document`. */
export function showPath(path: Path): string {
  return path.length === 0 ? 'the document' : path.map(showName).join('.')
}

/** A name as it stands, or in quotes where that alone shows what it is: an empty one, one with spaces, one of a thousand letters. */
export function showName(name: string): string {
  return /^[^\s"'\p{C}]{1,60}$/u.test(name) ? name : showText(name)
}

/** A text in quotes; only the beginning of a long one. */
export function showText(text: string): string {
  const shown = JSON.stringify(text.slice(0, 60)).replace(/\p{C}/gu, escapeLetters)
  return text.length > 60 || shown.length > 60 ? `${shown.slice(0, 57)}…` : shown
}

/** Letters that nobody sees, or that turn the text around them, as JSON escapes. */
function escapeLetters(letters: string): string {
  return Array.from(letters, (_, i) => `\\u${letters.charCodeAt(i).toString(16).padStart(4, '0')}`).join('')
}

/** Names that every JavaScript object answers to: no key of a document and no step of a path may be one of them. */
const INHERITED = new Set([...Object.getOwnPropertyNames(Object.prototype), 'prototype'])

export function isInherited(key: string): boolean {
  return INHERITED.has(key)
}

export function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/** The value at the path, or undefined where nothing stands; inherited properties count as nothing. */
export function valueAt(document: unknown, path: Path): Json | undefined {
  let value = document
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined
    value = (value as JsonObject)[key]
  }
  return value as Json | undefined
}

/** Two JSON values are the same, whatever the order of their keys. */
export function isSameJson(a: unknown, b: unknown): boolean {
  if (a === b) return true
  if (Array.isArray(a)) return Array.isArray(b) && a.length === b.length && a.every((value, i) => isSameJson(value, b[i]))
  if (!isObject(a) || !isObject(b)) return false
  const keys = Object.keys(a)
  return keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && isSameJson(a[key], b[key]))
}
