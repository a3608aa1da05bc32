import { recordDocument } from '@clampwright/core/record';
import { describe, expect, it } from 'vitest';
import { eventfulJob } from '../testing/eventful-job.ts';
import { everyBlock } from '../testing/every-block.ts';
import { renderHtml } from './render-html.ts';

// the time is for a busy machine
describe('renderHtml', { timeout: 60_000 }, () => {
  const page = renderHtml(everyBlock);

  it('loads nothing from anywhere and runs nothing', () => {
    expect(page).not.toMatch(/<(script|link|img|iframe|object)|\b(src|href)=|url\((?!#)|@import/);
    expect(page).toContain("default-src 'none'");
  });

  it('lets no text become markup', () => {
    expect(page).toContain('<h1>Every block &lt;b&gt;there&lt;/b&gt; is</h1>');
    expect(page).toContain('R-1 &lt;script&gt;');
  });

  it('closes every element that it opens', () => {
    const open: string[] = [];
    const wrong: string[] = [];
    for (const [tag, close, name = '', empty] of page.matchAll(/<(\/?)([a-z][a-z0-9]*)\b[^>]*?(\/?)>/g)) {
      if (close === '/' && open.pop() !== name) wrong.push(tag);
      if (close === '' && empty === '' && name !== 'meta') open.push(name);
    }
    expect([...wrong, ...open]).toEqual([]);
  });

  it('keeps every attempt of a record, with the word of its verdict', () => {
    const job = eventfulJob();
    const document = recordDocument(job.unsealed(), 'en');
    const rows = renderHtml(document).match(
      /<tr class="(plain|quiet)[^"]*"><td class="right">\d+<\/td><td class="right">\d+<\/td>/g,
    );
    expect(rows).toHaveLength(
      job.entries.filter(({ body }) => body.kind === 'pull' || body.kind === 'pull-moved').length,
    );
  });
});
