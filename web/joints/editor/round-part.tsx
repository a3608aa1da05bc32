import { say } from '@clampwright/core/language';
import { countPlaces, type Layout, positionsInOrder } from '@clampwright/core/layout';
import { showNumber } from '@clampwright/core/quantity';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FormFigure, PlaceProblems } from '../../forms/fields.tsx';
import { Button } from '../../parts/button.tsx';
import { Select } from '../../parts/select.tsx';
import { Tick } from '../../parts/tick.tsx';
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
      {round.positionShares ? (
        <PositionShares
          shares={round.positionShares}
          onDrop={() => onChange({ ...round, positionShares: undefined })}
        />
      ) : null}
      <PlaceProblems place={`${place}.positionShares`} />
      <ClosingFields place={place} round={round} onChange={onChange} />
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

interface PositionSharesProps {
  readonly shares: readonly number[];
  readonly onDrop: () => void;
}

/** Targets by position as a plan filled them in. */
function PositionShares({ shares, onDrop }: PositionSharesProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const show = (share: number) => showNumber(share * 100, language, { decimals: 1 });
  return (
    <details>
      <summary>{t('round.by-position')}</summary>
      <p className="position-shares" aria-label={t('round.targets-shown')}>
        {shares.map((share, index) => `${index + 1}:\u00a0${show(share)}\u00a0%`).join('; ')}
      </p>
      <Button kind="quiet" onPress={onDrop}>
        {t('round.drop-targets')}
      </Button>
    </details>
  );
}

interface ClosingFieldsProps {
  readonly place: string;
  readonly round: RoundForm;
  readonly onChange: (round: RoundForm) => void;
}

function ClosingFields({ place, round, onChange }: ClosingFieldsProps) {
  const { t } = useTranslation('lead');
  return (
    <>
      <Tick isChosen={round.isClosing} onChange={(isClosing) => onChange({ ...round, isClosing })}>
        {t('round.closing')}
      </Tick>
      {round.isClosing ? (
        <FormFigure
          field={`${place}.closing.stillDeg`}
          label={t('round.still')}
          unit="°"
          value={round.stillDeg}
          onChange={(stillDeg) => onChange({ ...round, stillDeg })}
        />
      ) : null}
      <PlaceProblems place={`${place}.closing`} shown={[`${place}.closing.stillDeg`]} />
    </>
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
