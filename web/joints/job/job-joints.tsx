import type { JointListItem } from '@clampwright/server/contract';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { FormText, PlaceProblems } from '../../forms/fields.tsx';
import { withoutRow, withRow } from '../../forms/rows.ts';
import { Button } from '../../parts/button.tsx';
import { Select } from '../../parts/select.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { type JobForm, withJoint } from './job-form.ts';

interface JobJointsProps {
  readonly form: JobForm;
  readonly joints: readonly JointListItem[];
  readonly onChange: (form: JobForm) => void;
}

/** The joints of the job in the order of the work; the same one may come several times under labels of its own. */
export function JobJoints({ form, joints, onChange }: JobJointsProps) {
  const { t } = useTranslation('lead');
  return (
    <Sheet title={t('new-job.joints')}>
      <ol className="rows">
        {form.joints.map((row, index) => (
          <li key={row.key} className="row-line">
            <span className="row-number">{index + 1}</span>
            <FormText
              field={`joints[${index}].label`}
              label={t('new-job.label')}
              hint={jointWords(joints.find((joint) => joint.id === row.jointId))}
              value={row.label}
              onChange={(label) => onChange({ ...form, joints: withRow(form.joints, { ...row, label }) })}
            />
            <Button
              kind="quiet"
              label={t('new-job.remove-label', { label: row.label })}
              onPress={() => onChange({ ...form, joints: withoutRow(form.joints, row.key) })}
            >
              {t('common.remove')}
            </Button>
          </li>
        ))}
      </ol>
      <PlaceProblems place="joints" shown={form.joints.map((_row, index) => `joints[${index}].label`)} />
      <AddJoint joints={joints} onAdd={(joint) => onChange(withJoint(form, joint))} />
    </Sheet>
  );

  function jointWords(joint: JointListItem | undefined): string | undefined {
    if (!joint) return undefined;
    const positions = t('joints.positions', { count: joint.positions });
    return `${joint.name}, ${t('joints.revision', { revision: joint.releasedRevision ?? 0 })}, ${positions}`;
  }
}

interface AddJointProps {
  readonly joints: readonly JointListItem[];
  readonly onAdd: (joint: JointListItem) => void;
}

function AddJoint({ joints, onAdd }: AddJointProps) {
  const { t } = useTranslation('lead');
  const [jointId, setJointId] = useState(joints[0]?.id ?? '');
  const chosen = joints.find((joint) => joint.id === jointId);
  return (
    <div className="add-line">
      <Select
        label={t('new-job.joint')}
        value={jointId}
        options={joints.map((joint) => ({ value: joint.id, label: joint.name }))}
        onChange={setJointId}
      />
      <Button isDisabled={!chosen} onPress={() => chosen && onAdd(chosen)}>
        {t('new-job.add')}
      </Button>
    </div>
  );
}
