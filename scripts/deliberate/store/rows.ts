import { circle } from './circle.ts';

export const rows = () => circle;
