/** How often each label met each finding. */
export class Confusion {
  readonly #rows = new Map<string, { total: number; readonly found: Map<string, number> }>();

  add(label: string, found: readonly string[]): void {
    const row = this.#rows.get(label) ?? { total: 0, found: new Map<string, number>() };
    this.#rows.set(label, row);
    row.total++;
    for (const kind of found.length > 0 ? found : ['none']) row.found.set(kind, (row.found.get(kind) ?? 0) + 1);
  }

  /** A Markdown table: labels down, findings across; a curve may have several. */
  table(): string {
    const kinds = [...new Set([...this.#rows.values()].flatMap(({ found }) => [...found.keys()]))].toSorted();
    const line = (cells: readonly (string | number)[]): string => `| ${cells.join(' | ')} |`;
    const head = [line(['label', 'curves', ...kinds]), line(['---', '---:', ...kinds.map(() => '---:')])];
    const body = [...this.#rows]
      .toSorted(([a], [b]) => a.localeCompare(b))
      .map(([label, { total, found }]) => line([label, total, ...kinds.map((kind) => found.get(kind) ?? 0)]));
    return [...head, ...body].join('\n');
  }
}
