import type { InteractionModel, Layout } from '@clampwright/core/layout';
import { useTranslation } from 'react-i18next';
import { modelOutline } from './model-outline.ts';

interface OutlineFigureProps {
  readonly model: InteractionModel;
  readonly layout: Layout;
}

/** Room about the part, and the size of a bolt, over half of the part. */
const ROOM = 1.04;
const BOLT = 0.03;

/** The joint as it is reckoned with, to scale, so that a slip in its dimensions is seen. */
export function OutlineFigure({ model, layout }: OutlineFigureProps) {
  const { t } = useTranslation('lead');
  const outline = modelOutline(model, layout);
  if (!outline) return null;
  const { part, bed, bolts, half } = outline;
  const [x, y] = [ROOM * half[0], ROOM * half[1]];
  return (
    <figure className="model-figure">
      <svg viewBox={`${-x} ${-y} ${2 * x} ${2 * y}`} role="img" aria-label={t('neighbours.outline')}>
        <path className="model-part" d={part} />
        <path className="model-bed" d={bed} />
        {bolts.map(({ position, xMm, yMm }) => (
          <circle key={position} className="model-bolt" cx={xMm} cy={yMm} r={BOLT * Math.max(x, y)} />
        ))}
      </svg>
      <figcaption className="small soft">{t('neighbours.outline')}</figcaption>
    </figure>
  );
}
