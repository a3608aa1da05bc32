import { useTranslation } from 'react-i18next';
import { nextKey, withoutRow, withRow } from '../../forms/rows.ts';
import { Button } from '../../parts/button.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { TextField } from '../../parts/text-field.tsx';
import type { JointPartProps } from './proof-part.tsx';

/** Cautions of this very joint; the usual ones of the trade are always shown. */
export function CautionsPart({ form, onChange }: JointPartProps) {
  const { t } = useTranslation('lead');
  const { cautions } = form;
  return (
    <Sheet title={t('joint.cautions')} anchor="cautions">
      <p className="soft">{t('joint.cautions-about')}</p>
      <ol className="rows">
        {cautions.map((caution, index) => (
          <li key={caution.key} className="row-line">
            <TextField
              isLong
              label={t('joint.caution', { number: index + 1 })}
              value={caution.text}
              onChange={(text) => onChange({ cautions: withRow(cautions, { ...caution, text }) })}
            />
            <Button
              kind="quiet"
              label={t('joint.caution-remove-label', { number: index + 1 })}
              onPress={() => onChange({ cautions: withoutRow(cautions, caution.key) })}
            >
              {t('common.remove')}
            </Button>
          </li>
        ))}
      </ol>
      <Button onPress={() => onChange({ cautions: [...cautions, { key: nextKey(cautions), text: '' }] })}>
        {t('joint.caution-add')}
      </Button>
    </Sheet>
  );
}
