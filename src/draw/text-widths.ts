/**
 * Advance widths of Barlow Semi Condensed in thousandths of the letter size, for the signs from space to tilde, read
 * from the font file; figures have their tabular width. The layout reserves room with them, so that it comes out the
 * same in Node, in a worker and on paper. `text-widths.test.ts` compares them with the font that is installed.
 */
const widths: Readonly<Record<Weight, { readonly ascii: readonly number[], readonly other: Readonly<Record<string, number>> }>> = {
  400: { ascii: [
    200, 285, 249, 624, 488, 815, 600, 125, 241, 241, 379, 471, 221, 354, 234, 367, 485, 485, 485,
    485, 485, 485, 485, 485, 485, 485, 275, 252, 471, 471, 471, 415, 794, 508, 538, 526, 542, 517,
    486, 532, 563, 237, 501, 531, 482, 618, 585, 539, 517, 510, 528, 500, 496, 562, 514, 751, 511,
    496, 472, 341, 367, 341, 423, 430, 188, 462, 484, 461, 484, 470, 317, 474, 482, 232, 223, 453,
    206, 737, 482, 480, 490, 490, 329, 428, 315, 480, 427, 638, 426, 414, 403, 288, 155, 288, 481,
  ], other: { '·': 203, '×': 396, 'ß': 494, 'æ': 742, 'ø': 479, 'Ø': 573, '–': 411, '—': 639, '’': 132, '…': 710, '−': 471 } },
  600: { ascii: [
    200, 302, 315, 642, 501, 802, 635, 153, 298, 298, 380, 465, 232, 364, 242, 417, 512, 512, 512,
    512, 512, 512, 512, 512, 512, 512, 304, 266, 465, 465, 465, 456, 789, 552, 542, 533, 545, 513,
    489, 537, 557, 243, 512, 549, 493, 627, 588, 544, 526, 521, 537, 513, 516, 557, 540, 771, 538,
    528, 480, 366, 417, 366, 439, 457, 213, 478, 498, 477, 498, 484, 333, 490, 491, 235, 231, 478,
    219, 747, 491, 490, 502, 502, 342, 446, 328, 489, 460, 677, 466, 446, 412, 334, 180, 334, 501,
  ], other: { '·': 220, '×': 413, 'ß': 509, 'æ': 755, 'ø': 497, 'Ø': 609, '–': 422, '—': 630, '’': 173, '…': 755, '−': 465 } },
}

export type Weight = 400 | 600

/** A space at which no line breaks: between a figure and its unit. */
export const NO_BREAK = '\u00a0'

/** Widest sign of the font: what a sign outside the table is taken for. */
const WIDEST = 850

/** Width of a line of text in the unit of `size`, without kerning. */
export function textWidth(text: string, size: number, weight: Weight = 400): number {
  let sum = 0
  for (const sign of text) sum += signWidth(sign, weight)
  return sum * size / 1000
}

function signWidth(sign: string, weight: Weight): number {
  const { ascii, other } = widths[weight]
  if (sign in other) return other[sign]
  if (sign === NO_BREAK) return ascii[0]
  const code = sign.normalize('NFD').charCodeAt(0)
  return ascii[code - 32] ?? WIDEST
}

/** The text in lines no wider than `room`, broken at spaces; a single longer word stays whole. */
export function wrapText(text: string, size: number, room: number, weight: Weight = 400): string[] {
  const lines: string[] = []
  for (const word of text.split(/[ \t\n]+/).filter((part) => part !== '')) {
    const joined = lines.length > 0 ? `${lines[lines.length - 1]} ${word}` : ''
    if (joined !== '' && textWidth(joined, size, weight) <= room) lines[lines.length - 1] = joined
    else lines.push(word)
  }
  return lines
}
