import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from '../../failure/parse.ts';
import { randomWords } from '../../statistics/random-words.ts';
import { elasticInteraction, elasticInteractionRequestSchema } from '../interaction/elastic-interaction.ts';
import { STAR_OF_EIGHT } from '../testing/ring-of-eight.ts';
import { type InteractionFit, interactionFit, interactionFitRequestSchema } from './interaction-fit.ts';

fc.configureGlobal({ seed: 24 });

const joint = { arrangement: 'circle', count: 8, order: [...STAR_OF_EIGHT], targetsN: [1000] } as const;

const asked = (request: object) => {
  const read = parse(interactionFitRequestSchema, request);
  return read.ok ? interactionFit(read.value) : read;
};
const fitted = (request: object): InteractionFit => {
  const answer = asked(request);
  if (!answer.ok) throw new Error(JSON.stringify(answer.failure));
  return answer.value;
};

/** All forces after each pull of a joint that is just so, with chance added. */
function measuredOf(neighbour: number, decay: number, chanceN = 0, seed = 1) {
  const { arrangement, count, ...rounds } = joint;
  const model = { kind: 'neighbours', arrangement, count, neighbour, decay };
  const answer = elasticInteraction(elasticInteractionRequestSchema.parse({ model, ...rounds }));
  if (!answer.ok) throw new Error(JSON.stringify(answer.failure));
  const words = randomWords(seed);
  const chance = () => chanceN * Math.sqrt(3) * (2 * words.fraction() - 1);
  return (answer.value.afterEachPull ?? []).flatMap((forces, step) =>
    forces.map((force, bolt) => ({
      afterPull: step + 1,
      position: bolt + 1,
      forceN: force === 0 ? 0 : Math.max(0, force + chance()),
    })),
  );
}

describe('a fit to measured forces', () => {
  it('finds the figures that they were made from', () => {
    const figures = fc.record({
      neighbour: fc.double({ min: 0.05, max: 0.35, noNaN: true }),
      decay: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
    });
    fc.assert(
      fc.property(figures, ({ neighbour, decay }) => {
        const fit = fitted({ ...joint, measured: measuredOf(neighbour, decay) });
        expect(fit.neighbour).toBeCloseTo(neighbour, 6);
        expect(fit.decay).toBeCloseTo(decay, 5);
        expect(fit.residualN).toBeLessThan(1e-3);
      }),
      { numRuns: 40 },
    );
  });

  it('holds them within their uncertainty nineteen times of twenty', () => {
    const runs = Array.from({ length: 100 }, (_, seed) =>
      fitted({ ...joint, measured: measuredOf(0.3, -0.25, 20, seed).filter(({ forceN }) => forceN > 0) }),
    );
    const held = runs.filter(
      ({ neighbour, neighbourUncertainty = 0 }) => Math.abs(neighbour - 0.3) < 2 * neighbourUncertainty,
    );
    expect(held.length).toBeGreaterThanOrEqual(90);
    expect(held.length).toBeLessThan(100);
    const mean = runs.reduce((sum, { residualN }) => sum + residualN, 0) / runs.length;
    expect(mean).toBeCloseTo(20, -0.5);
  });

  it('reads stretch and torque as forces', () => {
    const measured = measuredOf(0.3, 0.2);
    const stretched = measured.map(({ forceN, ...row }) => ({ ...row, elongationMm: forceN / 800_000 }));
    const torqued = measured.map(({ forceN, ...row }) => ({ ...row, torqueNm: (0.2 * 24 * forceN) / 1000 }));
    expect(fitted({ ...joint, measured: stretched, boltNPerMm: 800_000 }).neighbour).toBeCloseTo(0.3, 6);
    expect(fitted({ ...joint, measured: torqued, nutFactor: 0.2, majorDiameterMm: 24 }).decay).toBeCloseTo(0.2, 5);
  });

  it.each<[string, object, string]>([
    ['a pull that is not there', { measured: [{ afterPull: 9, position: 1, forceN: 1 }] }, 'measured[0].afterPull'],
    ['a position that is not there', { measured: [{ afterPull: 1, position: 9, forceN: 1 }] }, 'measured[0].position'],
    ['a row that tells nothing', { measured: [{ afterPull: 1, position: 1 }] }, 'measured[0]'],
    [
      'a row that tells two things',
      { measured: [{ afterPull: 1, position: 1, forceN: 1, torqueNm: 1 }] },
      'measured[0]',
    ],
    ['a stretch without a stiffness', { measured: [{ afterPull: 1, position: 1, elongationMm: 1 }] }, 'boltNPerMm'],
    ['a torque without K', { measured: [{ afterPull: 1, position: 1, torqueNm: 1 }] }, 'nutFactor'],
    [
      'a torque without d',
      { measured: [{ afterPull: 1, position: 1, torqueNm: 1 }], nutFactor: 0.2 },
      'majorDiameterMm',
    ],
    ['one measurement', { measured: [{ afterPull: 1, position: 1, forceN: 1000 }] }, 'measured'],
    [
      'measurements that decide nothing',
      { measured: [1, 2, 3].map(() => ({ afterPull: 1, position: 1, forceN: 1000 })) },
      'measured',
    ],
    ['an order with a gap', { order: [1, 2, 3], measured: measuredOf(0.3, 0.2) }, 'order'],
  ])('refuses %s', (_, more, field) => {
    expect(asked({ ...joint, ...more })).toMatchObject({ ok: false, failure: { field } });
  });
});
