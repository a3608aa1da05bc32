import type { JointContent } from '@clampwright/core/joint';
import { isTorqueUnit, unitsOf } from '@clampwright/core/quantity';
import { useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FaultsProvider } from '../../forms/faults.tsx';
import { FormText } from '../../forms/fields.tsx';
import { LeaveGuard } from '../../forms/leave-guard.tsx';
import { Select } from '../../parts/select.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import type { Brought } from '../brought/brought.ts';
import { DeriveDialog } from '../derive/derive-dialog.tsx';
import { inTorqueUnit } from '../form/blank.ts';
import type { JointForm } from '../form/joint-form.ts';
import { readJoint } from '../form/read.ts';
import { NeighboursPart } from '../plan/neighbours-part.tsx';
import { PlanPart } from '../plan/plan-part.tsx';
import '../plan/plan.css';
import { CautionsPart } from './cautions-part.tsx';
import { EditorFoot } from './editor-foot.tsx';
import { FastenerPart } from './fastener-part.tsx';
import { LayoutPart } from './layout-part.tsx';
import { DecisionPart, type JointPartProps, SourcePart } from './proof-part.tsx';
import { RetorquePart, ReworkPart } from './rework-part.tsx';
import { StagesPart } from './stages-part.tsx';

interface EditorProps {
  /** The joint as it was kept last. */
  readonly kept: JointForm;
  /** The same, or with what was brought from Bench filled in. */
  readonly initial: JointForm;
  /** What was begun on Bench: a derivation is taken up for the first stage that has a torque. */
  readonly brought?: Brought | undefined;
  /** What is kept so far is a draft, not a released revision. */
  readonly hasDraft: boolean;
  /** Keeps the draft; false when it could not be kept. */
  readonly onSave: (content: JointContent) => Promise<boolean>;
  readonly onRelease: () => Promise<void>;
  readonly isBusy: boolean;
}

/** A joint being written. */
export function Editor({ kept: keptFirst, initial, brought, hasDraft, onSave, onRelease, isBusy }: EditorProps) {
  const language = useLanguage();
  const [form, setForm] = useState(initial);
  const [kept, setKept] = useState(keptFirst);
  const [isAskedFor, setAskedFor] = useState(false);
  const [deriving, setDeriving] = useState(() => (brought?.derive ? stageToDerive(initial) : undefined));
  const reading = useMemo(() => readJoint(form, language), [form, language]);
  const set = (part: Partial<JointForm>) => setForm((before) => ({ ...before, ...part }));
  const save = async () => {
    setAskedFor(true);
    if (!reading.content || !(await onSave(reading.content))) return false;
    setKept(form);
    return true;
  };
  const release = async () => {
    if (form === kept || (await save())) await onRelease();
  };
  return (
    <FaultsProvider faults={reading.faults} isAskedFor={isAskedFor}>
      <NamePart form={form} onChange={set} />
      <FastenerPart fastener={form.fastener} onChange={(fastener) => set({ fastener })} />
      <LayoutPart form={form.layout} layout={reading.layout} onChange={(layout) => set({ layout })} />
      <StagesPart form={form} reading={reading} onDerive={setDeriving} onChange={set} />
      <NeighboursPart
        form={form.neighbours}
        layout={reading.layout}
        read={reading.neighbours}
        onChange={(neighbours) => set({ neighbours })}
      />
      <PlanPart form={form} reading={reading} onFill={setForm} />
      <SourcePart form={form} stages={reading.content?.stages} onChange={set} />
      <CautionsPart form={form} onChange={set} />
      <ReworkPart form={form} onChange={set} />
      <DecisionPart form={form} stages={reading.content?.stages} onChange={set} />
      <RetorquePart form={form} onChange={set} />
      <EditorFoot
        reading={reading}
        isDirty={form !== kept}
        canRelease={hasDraft || form !== keptFirst}
        isBusy={isBusy}
        onAsk={() => setAskedFor(true)}
        onSave={() => void save()}
        onRelease={() => void release()}
      />
      {deriving === undefined ? null : (
        <DeriveDialog
          joint={form}
          stageIndex={deriving}
          brought={brought}
          onClose={() => setDeriving(undefined)}
          onFill={(filled) => {
            setForm(filled);
            setDeriving(undefined);
          }}
        />
      )}
      <LeaveGuard isDirty={form !== kept} />
    </FaultsProvider>
  );
}

/** The first stage that judges torque alone, else the first that judges torque at all. */
function stageToDerive({ stages }: JointForm): number | undefined {
  const index = Math.max(
    stages.findIndex(({ kind }) => kind === 'torque'),
    stages.findIndex(({ torqueUsed }) => torqueUsed),
  );
  return index < 0 ? undefined : index;
}

const TORQUE_UNITS = unitsOf('torque').filter(isTorqueUnit);

function NamePart({ form, onChange }: JointPartProps) {
  const { t } = useTranslation('lead');
  return (
    <Sheet title={t('joint.what')} anchor="name">
      <div className="field-row">
        <FormText
          field="name"
          label={t('joint.name')}
          hint={t('joint.name-hint')}
          value={form.name}
          onChange={(name) => onChange({ name })}
        />
        <Select
          size="narrow"
          label={t('joint.torque-unit')}
          hint={t('joint.torque-unit-hint')}
          value={form.torqueUnit}
          options={TORQUE_UNITS.map((value) => ({ value, label: value }))}
          onChange={(torqueUnit) => onChange(inTorqueUnit(form, torqueUnit))}
        />
      </div>
    </Sheet>
  );
}
