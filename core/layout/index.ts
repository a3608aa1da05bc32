export { type DrawnSpot, type JointDrawing, jointDrawing } from './joint-drawing.ts';
export * from './layout.ts';
export * from './order-request.ts';
export * from './places.ts';
export { positionsInOrder } from './positions-in-order.ts';
export { MARK_KINDS, type MarkKind, verdictMark } from './verdict-mark.ts';
