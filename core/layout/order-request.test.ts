import { describe, expect, it } from 'vitest';
import { type OrderRequest, orderOf } from './order-request.ts';

describe('order asked for without a joint', () => {
  it('answers for circle, line and rectangle', () => {
    expect(orderOf({ layout: 'circle', count: 8, method: 'star' })).toEqual({
      ok: true,
      value: { order: [1, 5, 3, 7, 2, 6, 4, 8] },
    });
    expect(orderOf({ layout: 'line', count: 3, method: 'from-the-middle' })).toEqual({
      ok: true,
      value: { order: [2, 1, 3] },
    });
    expect(orderOf({ layout: 'rectangle', rows: 2, columns: 2, method: 'circular' })).toEqual({
      ok: true,
      value: { order: [1, 2, 3, 4] },
    });
  });

  it('answers for the largest', () => {
    const answer = orderOf({ layout: 'rectangle', rows: 10, columns: 20, method: 'star' });
    expect(answer.ok && new Set(answer.value.order).size).toBe(200);
  });

  it.each<[string, OrderRequest, string]>([
    ['a circle without a count', { layout: 'circle', method: 'star' }, 'count'],
    ['a circle of one', { layout: 'circle', count: 1, method: 'star' }, 'count'],
    ['a line of 201', { layout: 'line', count: 201, method: 'circular' }, 'count'],
    ['a rectangle without columns', { layout: 'rectangle', rows: 3, method: 'star' }, 'columns'],
    ['a rectangle of one', { layout: 'rectangle', rows: 1, columns: 1, method: 'star' }, 'rows'],
    ['a rectangle of 210', { layout: 'rectangle', rows: 14, columns: 15, method: 'star' }, 'rows'],
    [
      'a rectangle whose count does not fit',
      { layout: 'rectangle', rows: 2, columns: 3, count: 5, method: 'star' },
      'count',
    ],
    ['a circle with rows', { layout: 'circle', count: 8, rows: 2, method: 'star' }, 'rows'],
  ])('refuses %s, naming the field', (_, request, field) => {
    expect(orderOf(request)).toMatchObject({ ok: false, failure: { kind: 'invalid', field } });
  });
});
