import { jointDrawing, type Layout } from '@clampwright/core/layout';
import { useEffect, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';
import { OrderPicture } from './order-picture.tsx';

const STEP_MS = 650;

interface OrderDrawingProps {
  readonly layout: Layout;
  /** Positions in the order of the round; left out: the layout alone is shown. */
  readonly order?: readonly number[];
  /** Absent: a picture, not a choice. */
  readonly onTap?: (position: number) => void;
}

/** The positions seen from the tool side, numbered in the order of a round, which can be played. */
export function OrderDrawing({ layout, order = [], onTap }: OrderDrawingProps) {
  const { t } = useTranslation('lead');
  const { shown, isPlaying, play, stop } = usePlaying(order.length);
  const drawing = jointDrawing(layout);
  const label =
    order.length > 0
      ? t('round.drawing', { order: order.slice(0, shown).join(' ') })
      : t('layout.drawing', { count: drawing.spots.length });
  return (
    <figure className="order-figure">
      <OrderPicture drawing={drawing} order={order.slice(0, shown)} isPlaying={isPlaying} label={label} onTap={onTap} />
      {order.length > 1 ? (
        <figcaption>
          <Button kind="quiet" onPress={isPlaying ? stop : play}>
            {isPlaying ? t('round.stop') : t('round.play')}
          </Button>
        </figcaption>
      ) : null}
    </figure>
  );
}

/** How much of the order is shown: all of it, or while it is played one more with each step. */
function usePlaying(count: number) {
  const [step, setStep] = useState<number>();
  const isPlaying = step !== undefined;
  useEffect(() => {
    if (step === undefined) return;
    const timer = setTimeout(() => setStep(step >= count ? undefined : step + 1), STEP_MS);
    return () => clearTimeout(timer);
  }, [step, count]);
  return { shown: step ?? count, isPlaying, play: () => setStep(1), stop: () => setStep(undefined) };
}
