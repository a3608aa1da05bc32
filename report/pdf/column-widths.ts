/** How much a column wants: its longest word cannot be broken without harm, its longest line would be comfortable. */
export interface Extent {
  readonly wordPt: number;
  readonly linePt: number;
}

/**
 * Widths of columns that together fill a width, as browsers set tables: first the longest words, then what is
 * left over in proportion to what each still wants.
 *
 * @source CSS 2.2, 17.5.2.2 (automatic table layout)
 */
export function columnWidths(extents: readonly Extent[], widthPt: number): readonly number[] {
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const words = extents.map(({ wordPt }) => wordPt);
  const wants = extents.map(({ wordPt, linePt }) => linePt - wordPt);
  const spare = widthPt - sum(words);
  if (spare <= 0) return words.map((word) => (word * widthPt) / sum(words));
  const wanted = sum(wants);
  if (wanted > spare) return words.map((word, index) => word + (spare * wants[index]!) / wanted);
  const lines = extents.map(({ linePt }) => linePt);
  return lines.map((line) => line + ((spare - wanted) * line) / sum(lines));
}
