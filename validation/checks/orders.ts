import { type Check, check, describeSource } from '../check.ts';
import { fieldFrom } from '../got.ts';
import { CROSS_ORDERS, CROSS_ORDERS_READ, PAINTED_LABELS, PAINTED_LABELS_READ } from '../published/orders.ts';

function starOf(count: number): readonly unknown[] {
  const order = fieldFrom('tightening-order', { layout: 'circle', count, method: 'star' }, 'order');
  return Array.isArray(order) ? order : [];
}

const order = (printed: string): Check => {
  const count = printed.split(' ').length;
  return check(`${count} bolts, order`, () => starOf(count).join(' '), { value: printed, unit: '' });
};

/** What is painted at each position, clockwise from position 1: when it is its turn. */
const labels = (printed: string): Check => {
  const count = printed.split(' ').length;
  const painted = () => starOf(count).map((_, index) => starOf(count).indexOf(index + 1) + 1);
  return check(`${count} bolts, painted labels`, () => painted().join(' '), { value: printed, unit: '' });
};

export const ORDER_SOURCES = [
  describeSource('ASME PCC-1, legacy cross pattern', 'from memory', [
    ...CROSS_ORDERS.map(order),
    ...PAINTED_LABELS.map(labels),
  ]),
  describeSource('Cross pattern of eight and twelve bolts (secondary tables)', 'read', [
    ...CROSS_ORDERS_READ.map(order),
    ...PAINTED_LABELS_READ.map(labels),
  ]),
];
