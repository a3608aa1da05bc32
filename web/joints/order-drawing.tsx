import { jointDrawing, type Layout } from '@clampwright/core/layout';
import { useRef } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';
import { OrderPicture } from './order-picture.tsx';
import { StepControls } from './plan/step-controls.tsx';
import { useSteps } from './plan/use-steps.ts';
import { printAlone } from './print-alone.ts';

interface OrderDrawingProps {
  readonly layout: Layout;
  /** Positions in the order of the round; left out: the layout alone is shown. */
  readonly order?: readonly number[];
  /** Absent: a picture, not a choice. */
  readonly onTap?: (position: number) => void;
}

/** The positions seen from the tool side, numbered in the order of a round, which can be played and walked through. */
export function OrderDrawing({ layout, order = [], onTap }: OrderDrawingProps) {
  const { t } = useTranslation('lead');
  const steps = useSteps(order.length);
  const figure = useRef<HTMLElement>(null);
  const drawing = jointDrawing(layout);
  const shown = order.slice(0, steps.at);
  const label =
    order.length > 0
      ? t('round.drawing', { order: shown.join(' ') })
      : t('layout.drawing', { count: drawing.spots.length });
  const print = (): void => {
    steps.goTo(order.length);
    // the whole order is drawn first
    requestAnimationFrame(() => {
      if (figure.current) printAlone(figure.current);
    });
  };
  return (
    <figure className="order-figure" ref={figure}>
      <OrderPicture drawing={drawing} order={shown} isPlaying={steps.at < order.length} label={label} onTap={onTap} />
      {order.length > 1 ? (
        <figcaption>
          <StepControls steps={steps} />
          <Button kind="quiet" onPress={print}>
            {t('round.print')}
          </Button>
          <p className="printed-words">{t('round.drawing', { order: order.join(' ') })}</p>
        </figcaption>
      ) : null}
    </figure>
  );
}
