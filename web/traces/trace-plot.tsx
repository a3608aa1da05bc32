import { type Language, showNumber } from '@clampwright/core/quantity';
import { useEffect, useImperativeHandle, useRef } from 'react';
import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { useLanguage } from '../app/language.ts';
import { drawGround } from './ground.ts';
import { type Look, lookOf } from './look.ts';
import { drawMarks } from './marks.ts';
import type { TraceDrawing } from './trace-drawing.ts';

/** What buttons and keys ask of the plot. */
export interface PlotHand {
  /** Shows a share of what is shown now, around the read-off: below 1 nearer, above 1 farther. */
  readonly zoom: (share: number) => void;
  readonly whole: () => void;
  /** Puts the read-off on a sample of the curve. */
  readonly readAt: (index: number) => void;
}

interface TracePlotProps {
  readonly drawing: TraceDrawing;
  readonly axes: { readonly angle: string; readonly torque: string };
  readonly hand: React.Ref<PlotHand>;
  readonly onRead: (index: number) => void;
}

const HEIGHT = { least: 260, most: 460, share: 0.6 } as const;
const heightFor = (width: number): number => Math.min(HEIGHT.most, Math.max(HEIGHT.least, width * HEIGHT.share));

/** Torque over angle on a canvas. Dragging shows a part of it, a double press the whole. */
export default function TracePlot({ drawing, axes, hand, onRead }: TracePlotProps) {
  const language = useLanguage();
  const frame = useRef<HTMLDivElement>(null);
  const drawn = useRef<uPlot>(undefined);
  const told = useRef(onRead);
  useEffect(() => {
    told.current = onRead;
  }, [onRead]);
  useEffect(() => {
    const element = frame.current;
    if (!element) return undefined;
    const width = element.clientWidth;
    const options = optionsFor(drawing, axes, lookOf(element), language, (index) => told.current(index));
    const plot = new uPlot(
      { ...options, width, height: heightFor(width) },
      [drawing.curve.deg, drawing.curve.torque],
      element,
    );
    drawn.current = plot;
    const watcher = new ResizeObserver(() => {
      const wide = element.clientWidth;
      if (wide !== plot.width) plot.setSize({ width: wide, height: heightFor(wide) });
    });
    watcher.observe(element);
    return () => {
      watcher.disconnect();
      plot.destroy();
    };
  }, [drawing, axes, language]);
  useImperativeHandle(hand, () => handOf(() => drawn.current, drawing), [drawing]);
  return <div ref={frame} className="trace-canvas" />;
}

function handOf(plotNow: () => uPlot | undefined, { curve: { deg, torque } }: TraceDrawing): PlotHand {
  const whole = (): void => plotNow()?.setData([deg, torque], true);
  return {
    whole,
    zoom: (share) => {
      const plot = plotNow();
      const { min, max } = plot?.scales['x'] ?? {};
      if (!plot || min == null || max == null) return;
      const middle = deg[plot.cursor.idx ?? -1] ?? (min + max) / 2;
      const half = ((max - min) * share) / 2;
      const first = deg[0] ?? 0;
      const last = deg.at(-1) ?? 1;
      if (2 * half >= last - first) whole();
      else plot.setScale('x', { min: Math.max(first, middle - half), max: Math.min(last, middle + half) });
    },
    readAt: (index) => {
      const plot = plotNow();
      if (!plot) return;
      plot.setCursor({
        left: plot.valToPos(deg[index] ?? 0, 'x'),
        top: plot.valToPos(torque[index] ?? 0, 'y'),
      });
    },
  };
}

function optionsFor(
  drawing: TraceDrawing,
  axes: TracePlotProps['axes'],
  look: Look,
  language: Language,
  onRead: (index: number) => void,
): Omit<uPlot.Options, 'width' | 'height'> {
  const axis = (label: string, size: number): uPlot.Axis => ({
    label,
    size,
    stroke: look.ink,
    font: `15px ${look.font}`,
    labelFont: `650 15px ${look.font}`,
    labelSize: 24,
    grid: { stroke: look.line, width: 1 },
    ticks: { stroke: look.line, width: 1 },
    values: (_, splits) => splits.map((value) => showNumber(value, language)),
  });
  const topmost = Math.max(drawing.torqueLimits?.upper ?? 0, ...drawing.marks.map(({ torque }) => torque));
  return {
    scales: {
      x: { time: false },
      y: { range: (_, min, max) => [Math.min(0, min ?? 0), Math.max(max ?? 1, inSight(max, topmost)) * 1.08] },
    },
    legend: { show: false },
    cursor: { drag: { x: true, y: false, dist: 8 }, points: { size: 10, fill: look.accent } },
    axes: [axis(axes.angle, 44), axis(axes.torque, 64)],
    series: [{}, { stroke: look.accent, width: 3, points: { show: false } }],
    hooks: {
      drawAxes: [(plot) => drawGround(plot, drawing, look)],
      draw: [(plot) => drawMarks(plot, drawing.marks, look)],
      setCursor: [({ cursor: { idx } }) => (idx == null ? undefined : onRead(idx))],
    },
  };
}

/** The window stays in sight where the curve comes near it; a small part of the run-down is shown large instead. */
const inSight = (max: number | null, topmost: number): number => (max !== null && max > topmost / 3 ? topmost : 0);
