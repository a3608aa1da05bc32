import type { FastenerSpec, JointWarning } from '@clampwright/core/joint';
import { sayStage } from '@clampwright/core/language';
import type { Layout } from '@clampwright/core/layout';
import { STAGE_KINDS, type Stage } from '@clampwright/core/procedure';
import { type TorqueUnit, unitsOf } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { PlaceProblems } from '../../forms/fields.tsx';
import { Button } from '../../parts/button.tsx';
import { JointWarnings } from '../../parts/joint-warnings.tsx';
import { Select } from '../../parts/select.tsx';
import { Tick } from '../../parts/tick.tsx';
import { STAGE_QUANTITIES, stageOfKind } from '../form/blank.ts';
import type { StageForm } from '../form/joint-form.ts';
import { useAngleWindowWords, useTorqueWindowWords } from '../window-words.ts';
import { AngleConditions } from './angle-conditions.tsx';
import { RoundsPart } from './rounds-part.tsx';
import { WindowFields } from './window-fields.tsx';

export interface StagePartProps {
  readonly stage: StageForm;
  readonly index: number;
  readonly count: number;
  /** What the form says so far; undefined where a field is wrong. */
  readonly read: Stage | undefined;
  readonly layout: Layout | undefined;
  readonly torqueUnit: TorqueUnit;
  readonly fastener: FastenerSpec | undefined;
  readonly warnings: readonly JointWarning[];
  readonly onDerive: () => void;
  readonly onChange: (stage: StageForm) => void;
  readonly onMove: (by: -1 | 1) => void;
  readonly onRemove: () => void;
}

/** One stage: what is done, the windows that hold, the rounds. */
export function StagePart(props: StagePartProps) {
  const { stage, index, layout, onChange } = props;
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return (
    <section className="stage" aria-label={t('stage.number', { number: index + 1 })}>
      <div className="stage-head">
        <h3 className="stage-number">{t('stage.number', { number: index + 1 })}</h3>
        {props.count > 1 ? <StageButtons {...props} /> : null}
      </div>
      <Select
        label={t('stage.kind')}
        value={stage.kind}
        options={STAGE_KINDS.map((value) => ({ value, label: sayStage(value, language) }))}
        onChange={(kind) => onChange(stageOfKind(stage, kind))}
      />
      <PlaceProblems place={`stages[${index}].kind`} />
      <p className="soft">{t(`stage.about-${stage.kind}`)}</p>
      <StageWindows {...props} />
      <RoundsPart
        place={`stages[${index}].rounds`}
        rounds={stage.rounds}
        layout={layout}
        onChange={(rounds) => onChange({ ...stage, rounds })}
      />
    </section>
  );
}

function StageButtons({ index, count, onMove, onRemove }: StagePartProps) {
  const { t } = useTranslation('lead');
  const number = index + 1;
  return (
    <div className="actions">
      <Button kind="quiet" isDisabled={index === 0} label={t('stage.up-label', { number })} onPress={() => onMove(-1)}>
        {t('common.up')}
      </Button>
      <Button
        kind="quiet"
        isDisabled={number === count}
        label={t('stage.down-label', { number })}
        onPress={() => onMove(1)}
      >
        {t('common.down')}
      </Button>
      <Button kind="quiet" label={t('stage.remove-label', { number })} onPress={onRemove}>
        {t('common.remove')}
      </Button>
    </div>
  );
}

function StageWindows(props: StagePartProps) {
  const { stage, index, read, torqueUnit, onChange } = props;
  const { t } = useTranslation('lead');
  const torqueWords = useTorqueWindowWords();
  const angleWords = useAngleWindowWords();
  const place = `stages[${index}]`;
  const needs = STAGE_QUANTITIES[stage.kind];
  return (
    <>
      {needs.torque === 'optional' ? (
        <Tick isChosen={stage.torqueUsed} onChange={(torqueUsed) => onChange({ ...stage, torqueUsed })}>
          {t('stage.torque-too')}
        </Tick>
      ) : null}
      {stage.torqueUsed ? (
        <WindowFields
          title={t('stage.torque')}
          place={`${place}.torque`}
          form={stage.torque}
          units={unitsOf('torque')}
          understood={read?.torque && torqueWords(read.torque, torqueUnit)}
          onChange={(torque) => onChange({ ...stage, torque })}
        />
      ) : null}
      <TorqueDoubts {...props} />
      {stage.angleUsed ? (
        <>
          <WindowFields
            title={t('stage.angle')}
            place={`${place}.angle`}
            form={stage.angle}
            units={unitsOf('angle')}
            understood={read?.angle && angleWords(read.angle)}
            onChange={(angle) => onChange({ ...stage, angle })}
          />
          <AngleConditions stage={stage} place={place} onChange={onChange} />
        </>
      ) : null}
    </>
  );
}

/** What is doubtful in the torque, and the way out where the maker's figure is missing. */
function TorqueDoubts({ stage, index, fastener, warnings, onDerive }: StagePartProps) {
  const { t } = useTranslation('lead');
  return (
    <>
      {fastener ? <JointWarnings warnings={warnings} fastener={fastener} /> : null}
      {stage.kind === 'torque' ? (
        <Button kind="quiet" label={t('derive.open-label', { stage: index + 1 })} onPress={onDerive}>
          {t('derive.open')}
        </Button>
      ) : null}
    </>
  );
}
