export { type BarPart, partBar } from './bars.ts';
export { bell } from './density.ts';
export { layOutPlot, type Paper, type PlotLayout, type Shape, type Tick } from './lay-out.ts';
export { type Mark, numbered, type Plot, type PlotAxis, type PlotPoint } from './plot.ts';
