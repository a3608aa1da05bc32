import { rows } from './rows.ts';

export const circle = () => rows;
