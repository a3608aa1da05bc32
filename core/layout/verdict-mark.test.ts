import { describe, expect, it } from 'vitest';
import { fillingOf, polygonsOf } from './testing/inside-path.ts';
import { MARK_KINDS, type MarkKind, verdictMark } from './verdict-mark.ts';

const CELLS = 40;
const cells = Array.from({ length: CELLS * CELLS }, (_, i) => {
  const at = (index: number) => (index + 0.5) / CELLS - 0.5;
  return [at(i % CELLS), at(Math.floor(i / CELLS))] as const;
});
const filled = (kind: MarkKind) => cells.map(fillingOf(verdictMark(kind, 1)));
const pictures = new Map(MARK_KINDS.map((kind) => [kind, filled(kind).map(({ nonZero }) => nonZero)]));
const pairs = MARK_KINDS.flatMap((a, index) => MARK_KINDS.slice(index + 1).map((b) => [a, b] as const));

describe('verdict marks', () => {
  it.each(pairs)('%s and %s differ in black and white', (a, b) => {
    const [first, second] = [pictures.get(a)!, pictures.get(b)!];
    const either = first.filter((filled, index) => filled || second[index]).length;
    const both = first.filter((filled, index) => filled && second[index]).length;
    expect(both / either).toBeLessThan(0.8);
  });

  it.each(MARK_KINDS)('%s fills alike by both fill rules', (kind) => {
    expect(filled(kind).filter(({ nonZero, evenOdd }) => nonZero !== evenOdd)).toEqual([]);
  });

  it.each(MARK_KINDS)('%s stays within its size and uses most of it', (kind) => {
    const reach = Math.max(...polygonsOf(verdictMark(kind, 24)).flat(2).map(Math.abs));
    expect(reach).toBeLessThanOrEqual(12.001);
    expect(reach).toBeGreaterThan(10);
  });
});
