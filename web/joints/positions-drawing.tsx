import type { Layout } from '@clampwright/core/layout';
import { OrderDrawing } from './order-drawing.tsx';

/** Where the positions are, by their numbers, seen from the tool side. */
export const PositionsDrawing = ({ layout }: { readonly layout: Layout }) => <OrderDrawing layout={layout} />;
