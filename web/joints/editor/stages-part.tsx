import { useTranslation } from 'react-i18next';
import { nextKey, withoutRow, withRow, withRowMoved } from '../../forms/rows.ts';
import { Button } from '../../parts/button.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { blankStage } from '../form/blank.ts';
import { type StageForm } from '../form/joint-form.ts';
import type { JointReading } from '../form/read.ts';
import type { JointPartProps } from './proof-part.tsx';
import { StagePart } from './stage-part.tsx';

interface StagesPartProps extends JointPartProps {
  readonly reading: JointReading;
  /** A target is to be worked out for this stage, from 0. */
  readonly onDerive: (index: number) => void;
}

/** What is done to every position, stage after stage. */
export function StagesPart({ form, reading, onDerive, onChange }: StagesPartProps) {
  const { t } = useTranslation('lead');
  const { stages, torqueUnit } = form;
  const set = (changed: readonly StageForm[]) => onChange({ stages: changed });
  return (
    <Sheet title={t('joint.stages')} anchor="stages">
      {stages.map((stage, index) => (
        <StagePart
          key={stage.key}
          stage={stage}
          index={index}
          count={stages.length}
          read={reading.stages[index]}
          layout={reading.layout}
          fastener={reading.fastener}
          warnings={reading.warnings.filter(({ field }) => field.startsWith(`stages[${index}]`))}
          torqueUnit={torqueUnit}
          onChange={(changed) => set(withRow(stages, changed))}
          onDerive={() => onDerive(index)}
          onMove={(by) => set(withRowMoved(stages, stage.key, by))}
          onRemove={() => set(withoutRow(stages, stage.key))}
        />
      ))}
      <Button onPress={() => set([...stages, blankStage(nextKey(stages), 'angle', torqueUnit)])}>
        {t('stage.add')}
      </Button>
    </Sheet>
  );
}
