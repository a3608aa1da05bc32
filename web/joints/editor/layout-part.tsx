import type { Layout } from '@clampwright/core/layout';
import { useTranslation } from 'react-i18next';
import { Select } from '../../parts/select.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import type { LayoutForm } from '../form/joint-form.ts';
import { PositionsDrawing } from '../positions-drawing.tsx';
import { CircleFields, LineFields, RectangleFields } from './layout-fields.tsx';
import { PointsFields } from './points-fields.tsx';

const KINDS = ['circle', 'rectangle', 'line', 'points'] as const;
const LENGTH_UNITS = ['mm', 'in'] as const;

interface LayoutPartProps {
  readonly form: LayoutForm;
  /** What the form says so far, for the drawing. */
  readonly layout: Layout | undefined;
  readonly onChange: (layout: LayoutForm) => void;
}

/** Where the positions are, drawn while it is typed. */
export function LayoutPart({ form, layout, onChange }: LayoutPartProps) {
  const { t } = useTranslation('lead');
  const set = (part: Partial<LayoutForm>) => onChange({ ...form, ...part });
  return (
    <Sheet title={t('joint.layout')} anchor="layout">
      <div className="with-drawing">
        <div>
          <div className="field-row">
            <Select
              size="narrow"
              label={t('layout.kind')}
              value={form.kind}
              options={KINDS.map((value) => ({ value, label: t(`layout.kind-${value}`) }))}
              onChange={(kind) => set({ kind })}
            />
            <Select
              size="narrow"
              label={t('layout.unit')}
              value={form.unit}
              options={LENGTH_UNITS.map((value) => ({ value, label: value }))}
              onChange={(unit) => set({ unit })}
            />
          </div>
          <KindFields form={form} onChange={set} />
        </div>
        {layout ? <PositionsDrawing layout={layout} /> : <p className="drawing-waits">{t('layout.waits')}</p>}
      </div>
    </Sheet>
  );
}

interface KindFieldsProps {
  readonly form: LayoutForm;
  readonly onChange: (part: Partial<LayoutForm>) => void;
}

function KindFields(props: KindFieldsProps) {
  switch (props.form.kind) {
    case 'circle':
      return <CircleFields {...props} />;
    case 'rectangle':
      return <RectangleFields {...props} />;
    case 'line':
      return <LineFields {...props} />;
    case 'points':
      return <PointsFields {...props} />;
  }
}
