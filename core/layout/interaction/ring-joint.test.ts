import { describe, expect, it } from 'vitest';
import { RING_OF_EIGHT } from '../testing/ring-of-eight.ts';
import { modelled } from './model.ts';
import { type InteractionModel, modelSchema } from './model-schema.ts';

const FLAT_RING = {
  kind: 'ring',
  count: 12,
  boltCircleMm: 295,
  outerMm: 340,
  innerMm: 220,
  heightMm: 24,
  gasketOuterMm: 273,
  gasketInnerMm: 220,
  gasketThicknessMm: 2,
  gasketMPa: 500,
  boltNPerMm: 6e5,
};
const BAR = {
  kind: 'strip',
  count: 5,
  spacingMm: 90,
  endMm: 45,
  widthMm: 60,
  heightMm: 40,
  bedNPerMm3: 50,
  boltNPerMm: 6e5,
};
const COVER = {
  kind: 'plate',
  layout: { kind: 'line', count: 4, pitchMm: 90 },
  heightMm: 25,
  edgeMm: 30,
  bedNPerMm3: 50,
  boltNPerMm: 6e5,
};

const joint = (model: InteractionModel) => {
  const read = modelled(model);
  if (!read.ok) throw new Error(JSON.stringify(read.failure));
  return read.value;
};
const own = (model: InteractionModel) => joint(model).first.values[0]! - 1 / FLAT_RING.boltNPerMm;

describe('a pair of flanges', () => {
  it('is held against twisting by the width of its gasket, so that each bolt gives way less', () => {
    const line = modelSchema.parse({
      ...FLAT_RING,
      gasketOuterMm: 246.501,
      gasketInnerMm: 246.499,
      gasketThicknessMm: (2 * 0.001) / 26.5,
    });
    expect(own(modelSchema.parse(FLAT_RING)) / own(line)).toBeLessThan(0.8);
  });

  it('is held by the pipe it is welded to, the more the thicker its wall', () => {
    const held = [undefined, 3, 6.3, 12].map((pipeWallMm) => own(modelSchema.parse({ ...FLAT_RING, pipeWallMm })));
    expect(held).toEqual(held.toSorted((a, b) => b - a));
    expect(held[2]! / held[0]!).toBeCloseTo(0.9, 1);
  });

  it('refuses a pipe as wide as the flange', () => {
    const model = modelSchema.parse({ ...FLAT_RING, pipeWallMm: 60 });
    expect(modelled(model)).toMatchObject({ ok: false, failure: { field: 'model.pipeWallMm' } });
  });

  it('is told as without a hub where none is told', () => {
    const said = (model: InteractionModel) => joint(model).assumptions.map(({ code }) => code);
    expect(said(RING_OF_EIGHT)).toContain('no-hub');
    expect(said({ ...RING_OF_EIGHT, hubN: 1e5 })).not.toContain('no-hub');
    expect(said({ ...RING_OF_EIGHT, pipeWallMm: 5 })).toContain('pipe-holds');
  });
});

describe('a bed so firm that a thin part is no good likeness', () => {
  it.each([
    ['flange', FLAT_RING, { gasketMPa: 5000 }, { gasketUnloadingMPa: 5000 }],
    ['cover', COVER, { bedNPerMm3: 500 }, { bedUnloadingNPerMm3: 500 }],
    ['bar', BAR, { bedNPerMm3: 800 }, { bedUnloadingNPerMm3: 800 }],
  ])('is said of a %s, and of one that is let go as firmly', (_, model, firm, firmLetGo) => {
    const isFirm = (change: object) =>
      joint(modelSchema.parse({ ...model, ...change })).assumptions.some(({ code }) => code === 'firm-bed');
    expect(isFirm({})).toBe(false);
    expect(isFirm(firm)).toBe(true);
    expect(isFirm(firmLetGo)).toBe(true);
  });
});
