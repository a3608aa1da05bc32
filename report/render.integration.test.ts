import { deriveTarget } from '@clampwright/core/joint';
import { type Document, recordDocument } from '@clampwright/core/record';
import { beforeAll, describe, expect, it } from 'vitest';
import { renderCsv, renderPdf } from './index.ts';
import { eventfulJob } from './testing/eventful-job.ts';
import { everyBlock } from './testing/every-block.ts';
import { JobInHand } from './testing/job-in-hand.ts';
import { missing, output, withFile } from './testing/programs.ts';
import { tool, towerFlange } from './testing/ropeway.ts';

const POPPLER = {
  pdftotext: 'poppler-utils',
  pdffonts: 'poppler-utils',
  pdfinfo: 'poppler-utils',
  pdftoppm: 'poppler-utils',
};
const absent = missing({ ...POPPLER, qpdf: 'qpdf', zbarimg: 'zbar-tools' });

const closed = (): JobInHand => {
  const job = eventfulJob();
  job.signAndClose();
  return job;
};

/** Forty rings, each begun: many joints, long tables of few rows. */
function manyJoints(): Document {
  const job = new JobInHand(Array.from({ length: 40 }, () => towerFlange));
  const refs = job.state.joints.map(({ ref }) => ref);
  job.do({ kind: 'take-tool', wrenchId: tool.wrench.id, adapterId: tool.adapter!.id, jointRefs: refs });
  for (const ref of refs) job.work(ref, { pulls: 4 });
  return recordDocument(job.unsealed(), 'fr');
}

const words = async (path: string) => [
  ...(await output('pdftotext', ['-bbox', path, '-'])).matchAll(
    /<page width="([\d.]+)" height="([\d.]+)">|<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*?)<\/word>/g,
  ),
];

/** Words that reach into the margins of the paper, mm from its edges. */
async function outside(path: string, sideMm: number, endMm: number): Promise<readonly string[]> {
  const pt = 72 / 25.4;
  let [width, height] = [0, 0];
  return (await words(path)).flatMap(([, pageWidth, pageHeight, left, top, right, bottom, word]) => {
    if (pageWidth !== undefined) [width, height] = [Number(pageWidth), Number(pageHeight)];
    if (word === undefined) return [];
    const isOut =
      Number(left) < sideMm * pt ||
      Number(right) > width - sideMm * pt ||
      Number(top) < endMm * pt ||
      Number(bottom) > height - endMm * pt;
    return isOut ? [word] : [];
  });
}

/** Words that stand on one another, by more than a fifth of the smaller one. */
async function overlapping(path: string): Promise<readonly string[]> {
  let page: { left: number; top: number; right: number; bottom: number; word: string }[] = [];
  const found: string[] = [];
  for (const [, pageWidth, , left, top, right, bottom, word] of await words(path)) {
    if (pageWidth !== undefined) page = [];
    if (word === undefined) continue;
    const box = { left: Number(left), top: Number(top), right: Number(right), bottom: Number(bottom), word };
    // boxes are as high as the line; letters fill the middle half
    const clash = page.find(
      (other) =>
        Math.min(box.right, other.right) - Math.max(box.left, other.left) > 1 &&
        Math.abs(box.top + box.bottom - other.top - other.bottom) / 2 <
          Math.min(box.bottom - box.top, other.bottom - other.top) * 0.4,
    );
    if (clash) found.push(`${clash.word} ${box.word}`);
    page.push(box);
  }
  return found;
}

const absentFrom = (text: string, wanted: readonly string[]): readonly string[] =>
  wanted.filter((part) => !text.includes(part));

describe.skipIf(absent !== '')(`a record as PDF${absent}`, () => {
  const job = closed();
  const document = recordDocument(job.sealed(), 'en');
  let pdf: Uint8Array;

  beforeAll(async () => {
    pdf = await renderPdf(document);
  });

  const inPdf = <T>(use: (path: string) => Promise<T>) => withFile('record.pdf', pdf, use);

  it('is sound by qpdf', async () => {
    expect(await inPdf((path) => output('qpdf', ['--check', path]))).toContain(
      'No syntax or stream encoding errors found',
    );
  });

  it('embeds each of its typefaces, with their characters named', async () => {
    const fonts = (await inPdf((path) => output('pdffonts', [path]))).trim().split('\n').slice(2);
    expect(fonts).toHaveLength(3);
    for (const font of fonts) expect(font).toMatch(/NotoSans-\w+ +CID TrueType +Identity-H +yes yes yes/);
  });

  // ISO 19005-2:2011: 6.6.4 identification, 6.2.3 output intent, 6.7.2 marked; ISO 32000-1:2008, 14.9.2 language
  it('carries the marks of PDF/A-2a', async () => {
    const objects = await inPdf((path) => output('qpdf', ['--json=2', path]));
    const metadata = await inPdf((path) => output('pdfinfo', ['-meta', path]));
    expect(
      absentFrom(objects, ['"/Marked": true', '"/Lang": "u:en"', '"/S": "/GTS_PDFA1"', '"/DisplayDocTitle": true']),
    ).toEqual([]);
    expect(
      absentFrom(metadata, ['<pdfaid:part>2</pdfaid:part>', '<pdfaid:conformance>A</pdfaid:conformance>']),
    ).toEqual([]);
  });

  it('says page x of y and "invented" on every page', async () => {
    const pages = (await inPdf((path) => output('pdftotext', ['-layout', path, '-']))).split('\f').slice(0, -1);
    expect(pages.length).toBeGreaterThan(5);
    for (const [index, page] of pages.entries()) {
      expect(page).toContain(`page ${index + 1} of ${pages.length}`);
      expect(page).toContain('Invented demonstration');
    }
  });

  it('leaves out no pull', async () => {
    const text = await inPdf((path) => output('pdftotext', ['-layout', path, '-']));
    const times = job.entries.flatMap(({ at, body }) =>
      body.kind === 'pull' ? [`${at.slice(0, 10)} ${at.slice(11, 19)}`] : [],
    );
    const flat = text.replaceAll('\u00a0', ' ');
    expect(times.filter((time) => !flat.includes(time))).toEqual([]);
    expect(times.length).toBeGreaterThan(100);
  });

  it('has a barcode that reads back as the seal', async () => {
    const seal = document.blocks.find((block) => block.kind === 'seal');
    const read = await inPdf(async (path) => {
      await output('pdftoppm', ['-r', '150', '-png', path, `${path}-page`]);
      const { pages } = /Pages: +(?<pages>\d+)/.exec(await output('pdfinfo', [path]))!.groups!;
      return output('zbarimg', ['--raw', '--quiet', `${path}-page-${pages}.png`]);
    });
    expect(read.trim()).toBe(seal!.barcode.content);
  });
});

/** A small job, as poppler takes its time over the structure of a large one. */
function smallJob(): Document {
  const layout = { kind: 'circle', count: 4, diameterMm: 200, firstAngleDeg: 0, direction: 'clockwise' } as const;
  const derived = deriveTarget({
    thread: 'M24',
    propertyClass: '10.9',
    ownBolt: undefined,
    ownMaterial: undefined,
    ownLubricant: undefined,
    threadFriction: 0.1,
    bearingFriction: 0.1,
    utilization: 0.9,
    tighteningFactor: 1.6,
    plusMinusPercent: 5,
    torqueUnit: 'N·m',
    sources: ['own test of the paste'],
  });
  if (!derived.ok) throw new Error(derived.failure.kind);
  const { numbersSource } = towerFlange;
  const { derivation } = derived.value;
  const job = new JobInHand([
    { ...towerFlange, layout, numbersSource: { ...numbersSource, kind: 'derived', derivation } },
  ]);
  job.do({ kind: 'take-tool', wrenchId: tool.wrench.id, adapterId: tool.adapter!.id, jointRefs: ['J1'] });
  job.work('J1');
  job.signAndClose();
  return recordDocument(job.sealed(), 'en');
}

describe.skipIf(absent !== '')(`what is read out of a PDF${absent}`, () => {
  const document = smallJob();
  const inPdf = async <T>(use: (path: string) => Promise<T>) => withFile('small.pdf', await renderPdf(document), use);

  it('comes in order, tables row by row, words apart where lines end', async () => {
    const tree = await inPdf((path) => output('pdfinfo', ['-struct-text', path]));
    const read = tree.replaceAll('\u00a0', ' ');
    expect(read.split('\n').slice(0, 3)).toEqual([
      'Document "Tightening record"',
      '  H1 (block)',
      '    "Tightening record"',
    ]);
    expect(absentFrom(read, ['with no server and no network: clampwright record verify FILE.'])).toEqual([]);
    const tables = document.blocks.flatMap((block) => (block.kind === 'table' ? [block] : []));
    const told = tables.reduce(
      (sum, { groups }) =>
        sum + 1 + groups.reduce((rows, group) => rows + group.rows.length + (group.title === '' ? 0 : 1), 0),
      0,
    );
    expect(read.match(/^ {4}TR$/gm)).toHaveLength(told);
  });

  it('tells drawing, plots and barcode in words', async () => {
    const objects = await inPdf((path) => output('qpdf', ['--json=2', path]));
    const wanted = [
      '"/Alt": "u:J1 lower ring seen from the tool side: within 1–4"',
      '"/Alt": "u:Preload over torque. Window of the torque: ',
      '"/Alt": "u:Where the torque goes. Pitch: stretches the bolt: ',
      '"/Alt": "u:The barcode holds the same seal."',
    ];
    expect(absentFrom(objects, wanted)).toEqual([]);
  });
});

it('tells the figures of a plot as CSV', () => {
  const lines = renderCsv(smallJob(), 'torque-to-preload').split('\r\n');
  expect(lines[0]).toBe(',,Drawn,"Torque, N·m","Preload, kN",From,To');
  const [, , , ...target] = lines.find((line) => line.includes(',,Target,'))?.split(',') ?? [];
  // What the derivation filled in, and the preload in proportion to it: assembly torque by itself is held by validation.
  expect(target.slice(0, 2)).toEqual(['888', '274.002']);
});

describe.skipIf(absent !== '')(`the setting of pages${absent}`, () => {
  it.each([
    ['a record of one eventful ring, in German', () => recordDocument(closed().sealed(), 'de')],
    ['forty joints, in French', manyJoints],
    ['every kind of block on Letter, with reasons of two thousand characters', () => everyBlock],
  ])('keeps %s inside its margins, and nothing on top of anything', async (_, make) => {
    await withFile('record.pdf', await renderPdf(make()), async (path) => {
      expect(await outside(path, 17.9, 8)).toEqual([]);
      expect(await overlapping(path)).toEqual([]);
    });
  });

  it('says captions and titles again where a table goes on', async () => {
    const text = await withFile('long.pdf', await renderPdf(everyBlock), (path) =>
      output('pdftotext', ['-layout', path, '-']),
    );
    const pages = text.split('\f').filter((page) => /^ *\d\.\d+ +over/m.test(page));
    expect(pages.length).toBeGreaterThan(3);
    for (const page of pages.slice(1)) {
      expect(page).toContain('A table over pages (Fortsetzung)');
      expect(page).toMatch(/No\. +Verdict +Text/);
    }
  });
});
