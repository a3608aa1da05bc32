/** Rows under their heads, in columns. */
export function table(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const all = [head, ...rows].map((row) => row.map(String));
  const widths = head.map((_, column) => Math.max(...all.map((row) => row[column]?.length ?? 0)));
  const line = (row: readonly string[]): string =>
    row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ');
  return all.map((row) => line(row).trimEnd()).join('\n');
}
