import {
  layOutPlot,
  type Picture,
  type Plot,
  type PlotLayout,
  pictureInWords,
  type Shape,
} from '@clampwright/core/plot';
import { useId, useMemo } from 'react';
import { useLanguage } from '../app/language.ts';
import { Hatch } from './hatch.tsx';
import { PlotKey } from './plot-key.tsx';
import { Tag } from './tag.tsx';
import { useWidth } from './use-width.ts';
import './plots.css';

type PlotFigureProps = { readonly picture: Extract<Picture, { kind: 'plot' }> };

const LETTER_PX = 15;
const FIRST_WIDTH_PX = 320;

/** A plot as it is seen, with its key beneath; each mark is told by number, shape and word. */
export function PlotFigure({ picture }: PlotFigureProps) {
  const { title, plot } = picture;
  const language = useLanguage();
  const [ref, widthPx] = useWidth<HTMLDivElement>(FIRST_WIDTH_PX);
  const hatchId = useId();
  const layout = useMemo(() => {
    const width = Math.max(widthPx, 200);
    return layOutPlot(plot, { width, height: Math.min(380, Math.max(240, width * 0.58)), letter: LETTER_PX }, language);
  }, [plot, widthPx, language]);
  return (
    <figure className="plot">
      <figcaption>{title}</figcaption>
      <div ref={ref} className="plot-paper">
        <svg
          viewBox={`0 0 ${layout.width} ${layout.height}`}
          width={layout.width}
          height={layout.height}
          role="img"
          aria-label={pictureInWords(picture, language)}
        >
          <defs>
            <Hatch id={hatchId} kind="outside" />
          </defs>
          <Axes layout={layout} plot={plot} />
          {layout.shapes.map((shape, index) => (
            <ShapeDrawn key={index} shape={shape} hatchId={hatchId} />
          ))}
        </svg>
      </div>
      <PlotKey marks={plot.marks} hatchId={hatchId} />
    </figure>
  );
}

function Axes({ layout, plot }: { readonly layout: PlotLayout; readonly plot: Plot }) {
  const { left, right, top, bottom } = layout.frame;
  return (
    <g>
      {layout.yTicks.map(({ at, text }) => (
        <g key={text}>
          <line className="plot-grid" x1={left} x2={right} y1={at} y2={at} />
          <text className="plot-figure-text" x={left - LETTER_PX / 2} y={at} dy="0.35em" textAnchor="end">
            {text}
          </text>
        </g>
      ))}
      {layout.xTicks.map(({ at, text }) => (
        <g key={text}>
          <line className="plot-grid" x1={at} x2={at} y1={top} y2={bottom} />
          <text className="plot-figure-text" x={at} y={bottom + 1.2 * LETTER_PX} textAnchor="middle">
            {text}
          </text>
        </g>
      ))}
      <path className="plot-axis" d={`M${left} ${top}L${left} ${bottom}L${right} ${bottom}`} />
      <text className="plot-label" x={0} y={LETTER_PX}>
        {plot.y.label}
      </text>
      <text className="plot-label" x={right} y={layout.height - 0.35 * LETTER_PX} textAnchor="end">
        {plot.x.label}
      </text>
    </g>
  );
}

function ShapeDrawn({ shape, hatchId }: { readonly shape: Shape; readonly hatchId: string }) {
  switch (shape.kind) {
    case 'line':
      return <path className={shape.isDashed ? 'plot-line plot-line-dashed' : 'plot-line'} d={shape.path} />;
    case 'points':
      return (
        <g>
          <path className="plot-whiskers" d={shape.whiskers} />
          <path className={`plot-sign plot-sign-${shape.sign}`} d={shape.path} />
        </g>
      );
    case 'band':
    case 'bars':
      return shape.isHatched ? (
        <path className="plot-outside" d={shape.path} fill={`url(#${hatchId})`} />
      ) : (
        <path className={`plot-${shape.kind}`} d={shape.path} />
      );
    case 'window':
      return <path className="plot-window" d={shape.path} />;
    case 'limit':
      return (
        <g>
          <path className="plot-limit" d={shape.path} />
          <Tag number={shape.number} x={shape.x} y={shape.y} isRound={false} />
        </g>
      );
    case 'point':
      return (
        <g>
          <circle className="plot-point" cx={shape.x} cy={shape.y} r={5} />
          <Tag number={shape.number} x={shape.label.x} y={shape.label.y} isRound />
        </g>
      );
  }
}
