import { describe, expect, it } from 'vitest';
import { everyBlock } from '../testing/every-block.ts';
import { renderPdf } from './render-pdf.ts';

const same = (a: Uint8Array, b: Uint8Array): boolean => Buffer.compare(a, b) === 0;

// the time is for a busy machine
describe('renderPdf', { timeout: 60_000 }, () => {
  it('gives the same bytes for the same document', async () => {
    expect(same(await renderPdf(everyBlock), await renderPdf(everyBlock))).toBe(true);
  });

  it('gives other bytes for another date', async () => {
    const later = { ...everyBlock, datedAt: '2026-03-05T10:11:12.000Z' };
    expect(same(await renderPdf(everyBlock), await renderPdf(later))).toBe(false);
  });
});
