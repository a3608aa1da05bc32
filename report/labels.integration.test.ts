import { describe, expect, it } from 'vitest';
import { renderLabels } from './index.ts';
import { labelCode } from './labels.ts';
import { missing, output, withFile } from './testing/programs.ts';

const absent = missing({ pdftoppm: 'poppler-utils', pdfinfo: 'poppler-utils', zbarimg: 'zbar-tools' });

const label = (n: number) => ({
  id: `01991f3c-0000-7000-8000-${n.toString(16).padStart(12, '0')}`,
  name: `Drehmomentschlüssel der Talwerkstatt mit langem Namen ${n}`,
  serial: `KH-${n}`,
  calibratedOn: '2026-03-02',
  dueOn: '2027-03-02',
});

describe.skipIf(absent !== '')(`labels${absent}`, () => {
  it('go on over the page, and every code reads back as the identity', async () => {
    const labels = Array.from({ length: 26 }, (_, n) => label(n + 1));
    const pdf = await renderLabels(labels, 'de', '2026-03-02T00:00:00.000Z');
    const read = await withFile('labels.pdf', pdf, async (path) => {
      expect(await output('pdfinfo', [path])).toMatch(/Pages: +2\n/);
      await output('pdftoppm', ['-r', '200', '-png', path, `${path}-page`]);
      return output('zbarimg', ['--raw', '--quiet', `${path}-page-1.png`, `${path}-page-2.png`]);
    });
    expect(read.trim().split('\n').toSorted()).toEqual(labels.map(({ id }) => labelCode(id)).toSorted());
  });

  it('are the same bytes for the same labels', async () => {
    const twice = await Promise.all([1, 2].map(() => renderLabels([label(1)], 'fr', '2026-03-02T00:00:00.000Z')));
    expect(twice[0]).toEqual(twice[1]);
  });
});
