import type { Neighbours } from '@clampwright/core/joint';
import { sayRemark } from '@clampwright/core/language';
import { jointFrom, type Layout } from '@clampwright/core/layout';
import { showNumber } from '@clampwright/core/quantity';
import { useMemo } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FormFigure, FormText, PlaceProblems } from '../../forms/fields.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Select } from '../../parts/select.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { Tick } from '../../parts/tick.tsx';
import { MeasuredFields } from './measured-fields.tsx';
import { kindIn, kindsFor, MODEL_FIGURES, type ModelFigure, type NeighboursForm } from './neighbours-form.ts';
import { OutlineFigure } from './outline-figure.tsx';
import { sourceIn } from './play-plan.ts';

interface NeighboursPartProps {
  readonly form: NeighboursForm;
  readonly layout: Layout | undefined;
  /** What the form says so far. */
  readonly read: Neighbours | undefined;
  readonly onChange: (form: NeighboursForm) => void;
}

/** What one bolt does to the next: from dimensions, a measured matrix, or learned from a tightening. */
export function NeighboursPart({ form, layout, read, onChange }: NeighboursPartProps) {
  const { t } = useTranslation('lead');
  const set = (part: Partial<NeighboursForm>) => onChange({ ...form, ...part });
  return (
    <Sheet title={t('neighbours.title')} anchor="neighbours">
      <p className="soft prose">{t('neighbours.why')}</p>
      <Tick isChosen={form.isUsed} onChange={(isUsed) => set({ isUsed })}>
        {t('neighbours.use')}
      </Tick>
      {form.isUsed ? <NeighboursFields form={form} layout={layout} read={read} onChange={onChange} /> : null}
    </Sheet>
  );
}

function NeighboursFields({ form, layout, read, onChange }: NeighboursPartProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const taken = useMemo(() => takenForGranted(read), [read]);
  const set = (part: Partial<NeighboursForm>) => onChange({ ...form, ...part });
  const kind = kindIn(form, layout);
  return (
    <>
      <Notice kind="caution" title={t('neighbours.estimate')}>
        {read ? (
          <>
            <p>{t('neighbours.taken-for-granted')}</p>
            <ul className="caution-list">
              {taken.map((remark) => (
                <li key={remark.code}>{sayRemark(remark, language)}</li>
              ))}
              <li>{t('neighbours.proportion')}</li>
            </ul>
          </>
        ) : null}
      </Notice>
      <Select
        label={t('neighbours.kind')}
        value={kind}
        options={kindsFor(layout).map((value) => ({ value, label: t(`neighbours.kinds.${value}`) }))}
        onChange={(chosen) => set({ kind: chosen })}
      />
      <PlaceProblems place="neighbours.plan" />
      <KindFields form={form} layout={layout} read={read} onChange={onChange} />
      <FormText
        field="neighbours.note"
        label={t('neighbours.note')}
        hint={t('neighbours.note-hint')}
        value={form.note}
        onChange={(note) => set({ note })}
      />
    </>
  );
}

/** What the calculation itself takes for granted. */
function takenForGranted(read: Neighbours | undefined) {
  const joint = read && jointFrom(sourceIn(read));
  return joint?.ok ? joint.value.assumptions : [];
}

function KindFields({ form, layout, read, onChange }: NeighboursPartProps) {
  const { t } = useTranslation('lead');
  const kind = kindIn(form, layout);
  switch (kind) {
    case 'learned':
      return (
        <>
          <KeptFit form={form} />
          <MeasuredFields measured={form.measured} onChange={(measured) => onChange({ ...form, measured })} />
        </>
      );
    case 'interaction':
    case 'compliance': {
      const field = kind === 'interaction' ? 'neighbours.interaction' : 'neighbours.complianceMmPerN';
      return (
        <>
          <FormText
            field={field}
            label={t('neighbours.matrix')}
            hint={t('neighbours.matrix-hint')}
            isLong
            value={form.matrix}
            onChange={(matrix) => onChange({ ...form, matrix })}
          />
          <PlaceProblems place={field} shown={[field]} />
        </>
      );
    }
    default:
      return (
        <>
          <ModelFields
            figures={MODEL_FIGURES[kind]}
            texts={form.figures}
            onChange={(name, text) => onChange({ ...form, figures: { ...form.figures, [name]: text } })}
          />
          {layout && read?.model ? <OutlineFigure model={read.model} layout={layout} /> : null}
        </>
      );
  }
}

interface ModelFieldsProps {
  readonly figures: readonly ModelFigure[];
  readonly texts: Readonly<Record<string, string>>;
  readonly onChange: (name: string, text: string) => void;
}

function ModelFields({ figures, texts, onChange }: ModelFieldsProps) {
  const { t } = useTranslation('lead');
  const fields = figures.map(({ name }) => `neighbours.model.${name}`);
  return (
    <>
      <div className="field-row">
        {figures.map(({ name, unit, isOptional, empty }) => (
          <FormFigure
            key={name}
            field={`neighbours.model.${name}`}
            label={t(`bench.field.${name}`)}
            hint={empty ? t(`neighbours.empty.${empty}`) : isOptional ? t('neighbours.optional') : undefined}
            unit={unit}
            value={texts[name] ?? ''}
            onChange={(text) => onChange(name, text)}
          />
        ))}
      </div>
      <PlaceProblems place="neighbours.model" shown={fields} />
    </>
  );
}

/** What was learned before, while nothing new is pasted. */
function KeptFit({ form: { kept, measured } }: { readonly form: NeighboursForm }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  if (!kept?.fit || kept.model?.kind !== 'neighbours' || measured.rows.trim() !== '') return null;
  const show = (value: number) => showNumber(value, language, { significant: 3 });
  return (
    <p>
      {t('neighbours.kept-fit', {
        rows: kept.fit.rows,
        neighbour: show(kept.model.neighbour),
        decay: show(kept.model.decay),
        residual: show(kept.fit.residualN / 1000),
      })}
    </p>
  );
}
