export type { ToldFigure, ToldPull } from './told-pull.ts';
