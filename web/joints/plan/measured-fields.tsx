import { useTranslation } from 'react-i18next';
import { FormFigure, FormText, PlaceProblems } from '../../forms/fields.tsx';
import { Select } from '../../parts/select.tsx';
import { MEASURED_QUANTITIES, type NeighboursForm } from './neighbours-form.ts';

type Measured = NeighboursForm['measured'];

interface MeasuredFieldsProps {
  readonly measured: Measured;
  readonly onChange: (measured: Measured) => void;
}

/** A tightening that was measured: how it was done, and what was found after which pull. */
export function MeasuredFields({ measured, onChange }: MeasuredFieldsProps) {
  const { t } = useTranslation('lead');
  const set = (part: Partial<Measured>) => onChange({ ...measured, ...part });
  return (
    <>
      <div className="field-row">
        <FormText
          field="neighbours.order"
          label={t('neighbours.order')}
          hint={t('neighbours.order-hint')}
          value={measured.order}
          onChange={(order) => set({ order })}
        />
        <FormText
          field="neighbours.roundsKN"
          label={t('neighbours.rounds-kn')}
          hint={t('neighbours.rounds-kn-hint')}
          after="kN"
          value={measured.roundsKN}
          onChange={(roundsKN) => set({ roundsKN })}
        />
        <Select
          label={t('neighbours.quantity')}
          value={measured.quantity}
          options={MEASURED_QUANTITIES.map((value) => ({ value, label: t(`neighbours.quantities.${value}`) }))}
          onChange={(quantity) => set({ quantity })}
        />
        {measured.quantity === 'torqueNm' ? (
          <FormFigure
            field="neighbours.nmPerKN"
            label={t('neighbours.nm-per-kn')}
            unit="N·m"
            value={measured.nmPerKN}
            onChange={(nmPerKN) => set({ nmPerKN })}
          />
        ) : null}
        {measured.quantity === 'elongationMm' ? (
          <FormFigure
            field="neighbours.boltNPerMm"
            label={t('bench.field.boltNPerMm')}
            unit="N/mm"
            value={measured.boltNPerMm}
            onChange={(boltNPerMm) => set({ boltNPerMm })}
          />
        ) : null}
      </div>
      <FormText
        field="neighbours.measured"
        label={t('neighbours.measured')}
        hint={t('neighbours.measured-hint')}
        isLong
        value={measured.rows}
        onChange={(rows) => set({ rows })}
      />
      <PlaceProblems place="neighbours.measured" shown={['neighbours.measured']} />
      <PlaceProblems place="neighbours.targetsN" />
    </>
  );
}
