import { readFileSync } from 'node:fs';
import { rows } from '../store/rows.ts';

export const reach = () => [readFileSync, rows];
