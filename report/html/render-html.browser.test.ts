import { AxeBuilder } from '@axe-core/playwright';
import { recordDocument } from '@clampwright/core/record';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { eventfulJob } from '../testing/eventful-job.ts';
import { missing, output, withFile } from '../testing/programs.ts';
import { renderHtml } from './render-html.ts';

const absent = missing({ chromium: 'chromium', zbarimg: 'zbar-tools' });

const closed = () => {
  const job = eventfulJob();
  job.signAndClose();
  return recordDocument(job.sealed(), 'de');
};

describe.skipIf(absent !== '')(`a record as a page${absent}`, () => {
  const document = closed();
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] });
    const context = await browser.newContext({ viewport: { width: 390, height: 800 } });
    page = await context.newPage();
    await page.setContent(renderHtml(document));
  });

  afterAll(async () => {
    await browser?.close();
  });

  it('meets WCAG 2.2 AA by axe', async () => {
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  });

  it('fits a telephone without scrolling sideways', async () => {
    const width = await page.locator('html').evaluate((html) => html.scrollWidth);
    expect(width).toBe(390);
  });

  it('has a barcode that reads back as the seal', async () => {
    const seal = document.blocks.find((block) => block.kind === 'seal');
    const picture = await page.locator('.seal svg').screenshot({ scale: 'css' });
    const read = await withFile('barcode.png', picture, (path) => output('zbarimg', ['--raw', '--quiet', path]));
    expect(read.trim()).toBe(seal!.barcode.content);
  });
});
