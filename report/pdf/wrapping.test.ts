import PdfKit from 'pdfkit';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadFaces, STYLES } from './type.ts';
import { Wrapping } from './wrapping.ts';

let wrapping: Wrapping;

beforeAll(async () => {
  const faces = await loadFaces();
  const pdf = new PdfKit({ font: '' });
  for (const face of ['regular', 'semibold', 'bold'] as const) pdf.registerFont(face, Buffer.from(faces[face]));
  wrapping = new Wrapping(pdf, faces);
});

const lines = (text: string, widthPt: number) => wrapping.linesOf(text, STYLES.body, widthPt);

describe('linesOf', () => {
  it('sets no line wider than it may be, and loses nothing', () => {
    const text = 'The bolt is marked with a yellow dot and is exchanged at the first inspection of the season. '
      .repeat(8)
      .trim();
    const set = lines(text, 120);
    expect(Math.max(...set.map((line) => wrapping.widthOf(line.trimEnd(), STYLES.body)))).toBeLessThanOrEqual(120);
    expect(set.join('')).toBe(text);
  });

  it('cuts a word that is longer than a line', () => {
    const digest = '3f8a'.repeat(40);
    const set = lines(digest, 100);
    expect(set.length).toBeGreaterThan(2);
    expect(set.join('')).toBe(digest);
  });

  it('keeps the writer’s own line breaks', () => {
    expect(lines('one\ntwo\r\n\nthree', 300)).toEqual(['one ', 'two ', ' ', 'three']);
  });

  it('writes out what the face does not have, or names its code point', () => {
    expect(lines('Łódź, Ελλάς, Иван', 300)).toEqual(['Łódź, Ελλάς, Иван']);
    expect(lines('√(σ² + 3·τ²)·α_A·δ_S·Σφ·10⁷', 300)).toEqual(['sqrt(σ² + 3·τ²)·α_A·δ_S·Σφ·10⁷']);
    expect(lines('山 🔩', 300)).toEqual(['[U+5C71] [U+1F529]']);
  });
});
