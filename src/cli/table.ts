/** Rows of cells as text in columns; columns named in `right` are set flush right. */
export function formatTable(heads: readonly string[], rows: readonly (readonly string[])[], right: readonly string[] = []): string {
  const widths = heads.map((head, i) => Math.max(head.length, ...rows.map((row) => row[i].length)))
  const line = (cells: readonly string[]) => cells
    .map((cell, i) => (right.includes(heads[i]) ? cell.padStart(widths[i]) : cell.padEnd(widths[i]))).join('  ').trimEnd()
  return [line(heads), line(widths.map((width) => '─'.repeat(width))), ...rows.map(line)].join('\n')
}

/** A figure with this many decimals; what is not known is a dash. */
export function figure(value: number | null, decimals: number): string {
  return value === null ? '–' : (Math.abs(value) < 0.5 * 10 ** -decimals ? 0 : value).toFixed(decimals)
}
