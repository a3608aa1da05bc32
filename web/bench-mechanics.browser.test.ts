import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { brokenRules } from './testing/broken-rules.ts';
import { type ServedWorkshop, serveWorkshop } from './testing/served-workshop.ts';

let workshop: ServedWorkshop;
let office: BrowserContext;
let page: Page;

beforeAll(async () => {
  workshop = await serveWorkshop();
  office = await workshop.browser.newContext({ viewport: { width: 1280, height: 1000 }, locale: 'en-GB' });
  page = await office.newPage();
  page.setDefaultTimeout(15_000);
});
afterAll(() => workshop.end());

const CLAMPED = {
  thread: 'M12',
  shank: [{ lengthMm: 20, diameterMm: 12 }],
  layers: [
    { thicknessMm: 25, outerDiameterMm: 40 },
    { thicknessMm: 15, outerDiameterMm: 40 },
  ],
};

const CASES = {
  'assembly-torque': { thread: 'M12', propertyClass: '8.8', threadFriction: 0.12, bearingFriction: 0.12 },
  preload: {
    thread: 'M12',
    propertyClass: '8.8',
    torqueNm: { value: 80, standardUncertainty: 1.6, distribution: 'normal' },
    threadFriction: { value: 0.12, standardUncertainty: 0.012, distribution: 'rectangular' },
    bearingFriction: { value: 0.12, standardUncertainty: 0.012, distribution: 'rectangular' },
    lowerPreloadN: 39_000,
    upperPreloadN: 45_000,
  },
  friction: { thread: 'M12', torqueNm: 80, threadTorqueNm: 38, preloadN: 40_000 },
  'torque-plausibility': { thread: 'M12', propertyClass: '8.8', torqueNm: 114, typedUnit: 'lbf·ft' },
  compliance: CLAMPED,
  'tightening-angle': {
    ...CLAMPED,
    propertyClass: '10.9',
    threadFriction: 0.12,
    bearingFriction: 0.12,
    frictionLow: 0.1,
    frictionHigh: 0.16,
    snugTorqueNm: 30,
    angleDeg: 90,
  },
  'joint-check': {
    ...CLAMPED,
    propertyClass: '8.8',
    preloadN: 41_900,
    tighteningFactor: 1.8,
    threadFriction: 0.14,
    axialLoadN: 30_000,
  },
} as const;
type Case = keyof typeof CASES;

const addressOf = (name: Case, more: Readonly<Record<string, unknown>> = {}): string => {
  const search = Object.entries({ input: CASES[name], ...more }).map(
    ([key, value]) => `${key}=${encodeURIComponent(JSON.stringify(value))}`,
  );
  return `${workshop.url}/bench/${name}?${search.join('&')}`;
};
const open = async (name: Case, more: Readonly<Record<string, unknown>> = {}, shown: Page = page) => {
  await shown.goto(addressOf(name, more));
  await shown.getByRole('heading', { name: 'Result' }).waitFor();
};
const outputs = () => page.locator('.bench-result');
/** Figure of an output, by what it is called. */
const figureOf = async (label: string, shown: Page = page): Promise<string> => {
  const row = shown.locator('.outputs > div', { has: shown.locator('dt', { hasText: new RegExp(`^${label}$`) }) });
  return (await row.first().locator('.output-figure, .output-interval').first().innerText()).replace(/\s+/g, ' ');
};

describe('the bench for a fastener', () => {
  it('works a torque out and shows the formula with the numbers put in', async () => {
    await open('assembly-torque');
    expect(Number.parseFloat(await figureOf('Torque at the fastener'))).toBeCloseTo(83.4, 1);
    await outputs().getByRole('heading', { name: 'Working, to be checked' }).waitFor();
    expect(await page.locator('.working-numbers').first().innerText()).toMatch(/\d/);
  });

  it('shows and takes figures in another unit, and keeps it in the address', async () => {
    await page.getByLabel('Unit of Torque at the fastener').selectOption('lbf·ft');
    // 1 lbf·ft = 1.3558179483314004 N·m: NIST SP 811:2008, appendix B.
    const feet = Number.parseFloat(await figureOf('Torque at the fastener'));
    await page.waitForURL(/units=/);
    await page.reload();
    await page.getByRole('heading', { name: 'Result' }).waitFor();
    expect(Number.parseFloat(await figureOf('Torque at the fastener'))).toBeCloseTo(feet, 6);
    await page.getByLabel('Unit of Torque at the fastener').selectOption('N·m');
    expect(Number.parseFloat(await figureOf('Torque at the fastener')) / feet).toBeCloseTo(1.35581794833, 4);
  });

  it('draws anew with each step of a slider, without asking the server', async () => {
    await open('assembly-torque');
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    const slider = page.getByLabel(/^Slider for Friction in the thread/);
    const before = await page.locator('.plot .plot-line').first().getAttribute('d');
    const torque = await figureOf('Torque at the fastener');
    await slider.focus();
    for (let step = 0; step < 10; step++) await page.keyboard.press('ArrowRight');
    expect(await figureOf('Torque at the fastener')).not.toBe(torque);
    expect(await page.locator('.plot .plot-line').first().getAttribute('d')).not.toBe(before);
    expect(await page.getByLabel('Friction in the thread', { exact: true }).inputValue()).toBe('0.17');
    expect(asked.filter((url) => url.includes('/api/'))).toEqual([]);
  });

  it('draws a million times beside the page and sets both ways side by side', async () => {
    await open('preload');
    // Rectangular friction bends the result: the law of propagation alone would not do here.
    await outputs().getByText('The ways differ: take the draws.').waitFor();
    expect(await outputs().getByRole('columnheader', { name: '1 000 000 draws' }).count()).toBe(1);
    expect(await page.locator('.plot-outside').count()).toBeGreaterThanOrEqual(2);
    expect(await page.getByRole('img', { name: /Spread of the preload.*Below the window/ }).count()).toBe(1);
  });

  it('draws the torque over the angle with snug, yield and the end of the turn', async () => {
    await open('tightening-angle');
    const plot = page.getByRole('img', { name: /^Torque over angle, as expected\./ });
    expect(await plot.getAttribute('aria-label')).toMatch(/Snug: .*Yield begins: .*End of the turn: /);
    expect(await page.locator('.plot .plot-point').count()).toBe(3);
  });

  it('draws each margin of a joint, the worst first, and tells one that fails by shape and word', async () => {
    await open('joint-check');
    const parts = page.locator('.plot-parts li');
    expect(await parts.first().innerText()).toMatch(
      /stays closed\s+does not hold: 0\.\d+ \(at least 1\)[\s\S]*VDI 2230-1:2015, R2/,
    );
    const failing = parts.filter({ hasText: 'does not hold' });
    const told = await failing.count();
    expect(told).toBeGreaterThan(0);
    expect(await failing.locator('.verdict-over').count()).toBe(told);
    expect(await page.locator('.plot-part-bar .plot-outside').count()).toBe(told);
  });

  it('says doubts and what was taken for granted in the language of the page', async () => {
    const german = await workshop.browser.newContext({ locale: 'de-DE' });
    const shown = await german.newPage();
    await shown.goto(addressOf('tightening-angle'));
    await shown.getByText('Die Schraube fließt.').waitFor();
    await shown.getByText('bei 5\u00a0% plastischer Dehnung').waitFor();
    await shown.getByText('VDI 2230-1:2015, 5.1: Nachgiebigkeiten hintereinander').waitFor();
    await shown.goto(addressOf('torque-plausibility'));
    await shown.getByText('War der Wert in N·m').waitFor();
    await german.close();
  });

  it('tells a friction that cannot be at its field', async () => {
    await open('preload');
    const field = page.getByLabel('Friction in the thread', { exact: true });
    await field.fill('12');
    await page.locator('.field-problem', { hasText: 'Wanted' }).first().waitFor();
    expect(await outputs().getByText('The result appears once the figures are there.').count()).toBe(1);
  });
});

describe('what is taken along from the bench', () => {
  const clipboard = () => page.evaluate(() => navigator.clipboard.readText());

  it('is a link that opens the same calculation again, figures and units', async () => {
    await office.grantPermissions(['clipboard-read', 'clipboard-write']);
    await open('assembly-torque', { units: { torqueNm: 'lbf·ft' } });
    const torque = await figureOf('Torque at the fastener');
    await page.getByRole('button', { name: 'Copy as link' }).click();
    await outputs().getByText('copied').waitFor();
    const elsewhere = await office.newPage();
    await elsewhere.goto(await clipboard());
    await elsewhere.getByRole('heading', { name: 'Result' }).waitFor();
    expect(await figureOf('Torque at the fastener', elsewhere)).toBe(torque);
    expect(Number.parseFloat(torque)).toBeCloseTo(83.4 / 1.35581794833, 1);
    await elsewhere.close();
  });

  it('is JSON with every digit, which the API answers alike', async () => {
    await page.getByRole('button', { name: 'Copy as JSON' }).click();
    await expect.poll(clipboard).toMatch(/^\{/);
    const copied: unknown = JSON.parse(await clipboard());
    expect(copied).toMatchObject({ calculation: 'assembly-torque', input: CASES['assembly-torque'] });
    const answer = await office.request.post(`${workshop.url}/api/v1/calc/assembly-torque`, {
      data: CASES['assembly-torque'],
    });
    expect(copied).toHaveProperty('output', await answer.json());
  });

  it('is a torque with its window, filled into the stage of a new joint', async () => {
    await open('preload');
    await page.getByRole('button', { name: 'Go on in the joint' }).click();
    await page.getByText('Stage 1 was filled in from Bench.').waitFor();
    expect(await page.getByLabel('Target', { exact: true }).inputValue()).toBe('80');
    expect(await page.getByLabel('± percent', { exact: true }).inputValue()).toBe('4');
    expect(await page.getByLabel('Which document or trial', { exact: true }).inputValue()).toBe(
      'Worked out on Bench (Preload) for M12 8.8',
    );
  });

  it('is an angle with the torque to expect at its end', async () => {
    await open('tightening-angle');
    await page.getByRole('button', { name: 'Go on in the joint' }).click();
    await page.getByText('Stage 1 was filled in from Bench.').waitFor();
    const angle = page.getByRole('group', { name: 'Angle' });
    expect(await angle.getByLabel('Target', { exact: true }).inputValue()).toBe('90');
    expect(await angle.getByLabel('± percent', { exact: true }).inputValue()).toBe('');
    const limits = page.getByRole('group', { name: 'Torque' });
    const lower = Number(await limits.getByLabel('Lower limit', { exact: true }).inputValue());
    expect(Number(await limits.getByLabel('Upper limit', { exact: true }).inputValue())).toBeGreaterThan(lower);
  });

  it('is of a checked joint the derivation of its target, with its tightening factor', async () => {
    await open('joint-check');
    await page.getByRole('button', { name: 'Go on in the joint' }).click();
    const dialog = page.getByRole('dialog', { name: 'Derive a target for stage 1' });
    await dialog.waitFor();
    expect(await dialog.getByLabel('Tightening factor', { exact: true }).inputValue()).toBe('1.8');
    expect(await dialog.getByLabel('Friction in the thread', { exact: true }).inputValue()).toBe('0.14');
  });
});

const WIDTHS_PX = [360, 820, 1440];

/** Colours differ by theme and structure does not, so each theme is judged at one end of the widths. */
describe.each([
  { theme: 'light', judgedAtPx: 360 },
  { theme: 'dark', judgedAtPx: 1440 },
])('these calculations in the $theme', ({ theme, judgedAtPx }) => {
  it.each(Object.keys(CASES).filter((key): key is Case => key in CASES))(
    '%s meets WCAG 2.2 AA and never scrolls sideways',
    async (name) => {
      const context = await workshop.browser.newContext({
        viewport: { width: judgedAtPx, height: 900 },
        locale: 'en-GB',
        bypassCSP: true,
        reducedMotion: 'reduce',
      });
      await context.addInitScript((chosen) => localStorage.setItem('clampwright.theme', chosen), theme);
      const shown = await context.newPage();
      await open(name, {}, shown);
      if (name === 'preload') await shown.getByText('The ways differ: take the draws.').waitFor();
      expect(await brokenRules(shown)).toEqual([]);
      for (const width of WIDTHS_PX) {
        await shown.setViewportSize({ width, height: 900 });
        const overhangPx = await shown.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        expect([width, overhangPx]).toEqual([width, Math.min(overhangPx, 0)]);
        if (process.env['PICTURES']) {
          await shown.screenshot({ path: `${process.env['PICTURES']}/${name}-${theme}-${width}.png`, fullPage: true });
        }
      }
      await context.close();
    },
  );
});
