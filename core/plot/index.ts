export { type BarPart, partBar } from './bars.ts';
export { bell } from './density.ts';
export { layOutPlot, type Paper, type PlotLayout, type Tick } from './lay-out.ts';
export { type Part, type Picture, pictureInWords } from './picture.ts';
export {
  type KeyLine,
  keyOf,
  type Mark,
  type MarkOf,
  numbered,
  type Plot,
  type PlotAxis,
  type PlotPoint,
  type Sign,
} from './plot.ts';
export type { Shape } from './shapes.ts';
