import { rows } from '../store/rows.ts';

export const page = () => rows;
