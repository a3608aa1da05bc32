import { describe, expect, it } from 'vitest';
import type { WrittenMapping } from './mapping.ts';
import { briefly, pullsOf, readText } from './testing/read-text.ts';

describe('curves', () => {
  const CURVES: Partial<WrittenMapping> = {
    position: 'pos',
    rows: { each: 'sample', curveBy: 'run' },
    time: { column: 't', format: 'elapsed-seconds', start: '2026-05-04T09:00:00.000Z' },
  };
  const HEAD = 'run,pos,t,torque,angle';
  const curve = (run: string, position: number, torques: readonly (number | string)[]) =>
    torques.map((torque, i) => `${run},${position},${i / 10},${torque},${5 * i}`);
  const read = (lines: readonly string[], changes: Partial<WrittenMapping> = {}) =>
    readText([HEAD, ...lines].join('\n'), { ...CURVES, ...changes });

  it('become a pull with the trace, its peak torque and its furthest angle', async () => {
    const outcomes = await read([...curve('a', 1, [0, 20, 61.5, 60, 0]), ...curve('b', 2, [0, 62])]);
    expect(outcomes).toMatchObject([
      {
        line: 2,
        pull: {
          position: 1,
          shownTorqueNm: 61.5,
          shownAngleDeg: 20,
          shown: { torque: { text: '61.5', unit: 'N·m' }, angle: { text: '20', unit: 'deg' } },
          takenAt: '2026-05-04T09:00:00.400Z',
          trace: { timeS: [0, 0.1, 0.2, 0.3, 0.4], torqueNm: [0, 20, 61.5, 60, 0], angleDeg: [0, 5, 10, 15, 20] },
        },
      },
      { line: 7, pull: { position: 2, shownTorqueNm: 62 } },
    ]);
  });

  it('convert their units sample by sample', async () => {
    const [outcome] = await read(curve('a', 1, [0, 6000]), {
      torqueUnit: { unit: 'cN·m' },
      angleUnit: { unit: 'turn' },
    });
    expect(outcome).toMatchObject({
      pull: { shownTorqueNm: 60, shownAngleDeg: 1800, trace: { torqueNm: [0, 60], angleDeg: [0, 1800] } },
    });
  });

  it('are spoiled by one bad row, told by its line, and the next one is read', async () => {
    const outcomes = await read([...curve('a', 1, [0, 'x', 60]), ...curve('b', 2, [0, 62])]);
    expect(briefly(outcomes)).toEqual([
      [3, 'torque', '“x” is no figure.'],
      [5, 62],
    ]);
  });

  it.each([
    ['a single row', curve('a', 1, [60]), 'The curve has a single row.'],
    [
      'a loosening',
      curve('a', 1, [0, -60, 20]),
      'The torque is negative: this is a loosening, not a pull that tightens.',
    ],
    ['a time that goes back', ['a,1,0.2,0,0', 'a,1,0.1,60,5'], 'The time goes back within the curve.'],
    ['a short row', ['a,1,0.1,0,0', 'a,1,0.2'], 'The row has 3 cells; it is cut short, as 5 are needed.'],
    ['an absurd peak', curve('a', 1, [0, 99_000]), expect.stringContaining('more than makes sense')],
  ])('refuse %s', async (_, lines, message) => {
    expect(await read(lines)).toMatchObject([{ kind: 'refused', message }]);
  });

  it('have the same identity when read again, and another one when a sample differs', async () => {
    const ids = async (lines: readonly string[]) => pullsOf(await read(lines)).map((pull) => pull.id);
    const first = await ids(curve('a', 1, [0, 60, 59]));
    expect(await ids(curve('a', 1, [0, 60, 59]))).toEqual(first);
    expect(await ids(curve('a', 1, [0, 60, 58]))).not.toEqual(first);
    expect(await ids(curve('b', 1, [0, 60, 59]))).not.toEqual(first);
  });
});
