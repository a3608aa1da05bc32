import { expect, it } from 'vitest';
import { freePlace } from './marks.ts';

const SIZE = 24;

it('leaves a mark where it belongs as long as none stands there', () => {
  expect(freePlace({ x: 200, y: 100 }, [{ x: 240, y: 100 }], SIZE, 60)).toEqual({ x: 200, y: 100 });
});

it('moves a mark up and to the left of one that stands there', () => {
  const { x, y } = freePlace({ x: 200, y: 100 }, [{ x: 200, y: 100 }], SIZE, 60);
  expect(x).toBeLessThan(200);
  expect(y).toBeLessThan(100);
});

it('moves marks at the left edge into the plot, off the figures of the axis', () => {
  const taken = [{ x: 62, y: 300 }];
  for (let mark = 0; mark < 4; mark++) {
    const place = freePlace({ x: 62, y: 300 }, taken, SIZE, 60);
    expect(place.x).toBeGreaterThanOrEqual(62);
    expect(taken.every((one) => Math.hypot(one.x - place.x, one.y - place.y) >= SIZE)).toBe(true);
    taken.push(place);
  }
});
