import { expect, it } from 'vitest';
import { answerTo, withFewDraws, withoutDraws } from './draws.ts';

const INPUT = {
  thread: 'M12',
  torqueNm: { value: 80, standardUncertainty: 1.6 },
  threadFriction: 0.12,
  bearingFriction: 0.12,
};

it('draws few while a figure moves, and never more than were asked for', () => {
  expect(withFewDraws(INPUT)).toMatchObject({ draws: 10_000 });
  expect(withFewDraws({ ...INPUT, draws: 2000 })).toMatchObject({ draws: 2000 });
});

it('answers with the draws that it was asked for', () => {
  const { id, result } = answerTo({ id: 7, name: 'preload', input: withFewDraws(INPUT) });
  expect(id).toBe(7);
  expect(result).toMatchObject({ ok: true, value: { monteCarlo: { draws: 10_000 } } });
});

it('finds the preload without drawing', () => {
  const { result } = answerTo({ id: 8, name: 'preload', input: withoutDraws(INPUT) });
  expect(result).toMatchObject({ ok: true, value: { method: 'propagation' } });
  expect(result.ok && result.value).not.toHaveProperty('monteCarlo');
});
