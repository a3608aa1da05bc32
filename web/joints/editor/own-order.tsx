import { countPlaces, type Layout } from '@clampwright/core/layout';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { outOfPlace, positionsIn, stillMissing, tapped } from '../form/own-order.ts';
import { OrderDrawing } from '../order-drawing.tsx';

interface OwnOrderProps {
  readonly layout: Layout;
  readonly positions: readonly number[];
  readonly onChange: (positions: readonly number[]) => void;
}

/** An order of the lead's own: tapped on the drawing, or typed as a list. */
export function OwnOrder({ layout, positions, onChange }: OwnOrderProps) {
  const { t } = useTranslation('lead');
  const [typed, setTyped] = useState<string>();
  const count = countPlaces(layout);
  const set = (next: readonly number[]) => {
    setTyped(undefined);
    onChange(next);
  };
  return (
    <div className="own-order">
      <TextField
        label={t('round.own')}
        hint={t('round.own-hint')}
        value={typed ?? positions.join(' ')}
        onChange={(text) => {
          setTyped(text);
          onChange(positionsIn(text));
        }}
      />
      <OwnOrderState missing={stillMissing(positions, count)} odd={outOfPlace(positions, count)} />
      <div className="actions">
        <Button kind="quiet" isDisabled={positions.length === 0} onPress={() => set(positions.slice(0, -1))}>
          {t('round.own-back')}
        </Button>
        <Button kind="quiet" isDisabled={positions.length === 0} onPress={() => set([])}>
          {t('round.own-anew')}
        </Button>
      </div>
      <OrderDrawing layout={layout} order={positions} onTap={(position) => set(tapped(positions, position))} />
    </div>
  );
}

interface OwnOrderStateProps {
  readonly missing: readonly number[];
  readonly odd: readonly number[];
}

/** Whether each position comes once; else which are missing, come twice or are not there. */
function OwnOrderState({ missing, odd }: OwnOrderStateProps) {
  const { t } = useTranslation('lead');
  return (
    <p className="soft" aria-live="polite">
      {odd.length > 0 ? `${t('round.own-odd', { positions: odd.join(', ') })} ` : null}
      {missing.length > 0 ? t('round.own-missing', { positions: missing.join(', ') }) : null}
      {odd.length + missing.length === 0 ? t('round.own-whole') : null}
    </p>
  );
}
