import { say } from '@clampwright/core/language';
import { countPlaces, type Layout, positionsInOrder } from '@clampwright/core/layout';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FormFigure, PlaceProblems } from '../../forms/fields.tsx';
import { Button } from '../../parts/button.tsx';
import { Select } from '../../parts/select.tsx';
import type { Method, RoundForm } from '../form/joint-form.ts';
import { orderOf } from '../form/read-stage.ts';
import { OrderDrawing } from '../order-drawing.tsx';
import { OwnOrder } from './own-order.tsx';

interface RoundPartProps {
  readonly place: string;
  readonly number: number;
  readonly round: RoundForm;
  readonly layout: Layout | undefined;
  readonly onChange: (round: RoundForm) => void;
  readonly onRemove: (() => void) | undefined;
}

/** One round; its order can be looked at, and an own one is tapped on the drawing. */
export function RoundPart({ place, number, round, layout, onChange, onRemove }: RoundPartProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [isDrawn, setDrawn] = useState(false);
  return (
    <li className="round">
      <div className="field-row">
        <span className="row-number">{number}</span>
        <FormFigure
          field={`${place}.share`}
          label={t('round.share')}
          unit="%"
          value={round.sharePercent}
          onChange={(sharePercent) => onChange({ ...round, sharePercent })}
        />
        <Select
          label={t('round.order')}
          value={round.method}
          options={methodsFor(layout).map((value) => ({ value, label: say(language, `order.${value}`) }))}
          onChange={(method) => onChange({ ...round, method })}
        />
        {onRemove ? (
          <Button kind="quiet" label={t('round.remove-label', { number })} onPress={onRemove}>
            {t('common.remove')}
          </Button>
        ) : null}
      </div>
      {layout && round.method === 'own' ? (
        <OwnOrder
          layout={layout}
          positions={round.positions}
          onChange={(positions) => onChange({ ...round, positions })}
        />
      ) : null}
      {layout && round.method !== 'own' ? (
        <RoundOrder layout={layout} round={round} isDrawn={isDrawn} onDraw={() => setDrawn(!isDrawn)} />
      ) : null}
      <PlaceProblems place={`${place}.order`} />
    </li>
  );
}

/** On a circle, from the middle has no meaning. */
const methodsFor = (layout: Layout | undefined): readonly Method[] =>
  layout?.kind === 'circle' ? ['star', 'circular', 'own'] : ['star', 'circular', 'from-the-middle', 'own'];

interface RoundOrderProps {
  readonly layout: Layout;
  readonly round: RoundForm;
  readonly isDrawn: boolean;
  readonly onDraw: () => void;
}

function RoundOrder({ layout, round, isDrawn, onDraw }: RoundOrderProps) {
  const { t } = useTranslation('lead');
  const order = positionsInOrder(layout, orderOf(round));
  if (!order.ok || countPlaces(layout) < 2) return null;
  return (
    <>
      <p className="sequence">{order.value.join(' ')}</p>
      <Button kind="quiet" onPress={onDraw}>
        {isDrawn ? t('round.hide-drawing') : t('round.show-drawing')}
      </Button>
      {isDrawn ? <OrderDrawing layout={layout} order={order.value} /> : null}
    </>
  );
}
