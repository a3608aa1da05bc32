export * from './layout.ts';
export * from './order-request.ts';
export * from './places.ts';
export { positionsInOrder } from './positions-in-order.ts';
