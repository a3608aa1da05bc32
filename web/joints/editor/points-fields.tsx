import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FormFigure, PlaceProblems } from '../../forms/fields.tsx';
import { nextKey, withoutRow, withRow } from '../../forms/rows.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { type LayoutForm, type PointForm } from '../form/joint-form.ts';
import { pastedPoints } from '../form/points.ts';

interface PointsFieldsProps {
  readonly form: LayoutForm;
  readonly onChange: (part: Partial<LayoutForm>) => void;
}

/** Free points, one by one or as a pasted list. */
export function PointsFields({ form, onChange }: PointsFieldsProps) {
  const { t } = useTranslation('lead');
  const { points } = form;
  const set = (changed: readonly PointForm[]) => onChange({ points: changed });
  return (
    <>
      <ol className="rows">
        {points.map((point, index) => (
          <li key={point.key} className="row-line">
            <span className="row-number">{index + 1}</span>
            <FormFigure
              field={`layout.points[${index}].xMm`}
              label={t('layout.x')}
              unit={form.unit}
              value={point.x}
              onChange={(x) => set(withRow(points, { ...point, x }))}
            />
            <FormFigure
              field={`layout.points[${index}].yMm`}
              label={t('layout.y')}
              unit={form.unit}
              value={point.y}
              onChange={(y) => set(withRow(points, { ...point, y }))}
            />
            <Button
              kind="quiet"
              label={t('layout.point-remove-label', { position: index + 1 })}
              onPress={() => set(withoutRow(points, point.key))}
            >
              {t('common.remove')}
            </Button>
          </li>
        ))}
      </ol>
      <PlaceProblems
        place="layout.points"
        shown={points.flatMap((_point, index) => [`layout.points[${index}].xMm`, `layout.points[${index}].yMm`])}
      />
      <Button onPress={() => set([...points, { key: nextKey(points), x: '', y: '' }])}>{t('layout.point-add')}</Button>
      <PastePoints onPaste={(read) => set([...points, ...read])} firstKey={nextKey(points)} />
    </>
  );
}

interface PastePointsProps {
  readonly firstKey: number;
  readonly onPaste: (points: readonly PointForm[]) => void;
}

function PastePoints({ firstKey, onPaste }: PastePointsProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [text, setText] = useState('');
  const read = pastedPoints(text, language, firstKey);
  const take = () => {
    onPaste(read.points);
    setText('');
  };
  return (
    <div className="paste">
      <TextField
        isLong
        label={t('layout.paste')}
        hint={t('layout.paste-hint')}
        value={text}
        onChange={setText}
        problem={read.badLines.length > 0 ? t('layout.paste-bad', { lines: read.badLines.join(', ') }) : undefined}
      />
      <Button isDisabled={read.points.length === 0 || read.badLines.length > 0} onPress={take}>
        {t('layout.paste-take', { count: read.points.length })}
      </Button>
    </div>
  );
}
