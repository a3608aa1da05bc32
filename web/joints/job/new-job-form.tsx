import type { Asset } from '@clampwright/core/record';
import type { JointListItem } from '@clampwright/server/contract';
import { useNavigate } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useWho } from '../../app/who.tsx';
import { FaultsProvider } from '../../forms/faults.tsx';
import { FormText } from '../../forms/fields.tsx';
import { LeaveGuard } from '../../forms/leave-guard.tsx';
import { Button } from '../../parts/button.tsx';
import { Select } from '../../parts/select.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { Trouble } from '../../parts/states.tsx';
import { newIdentity } from '../../work/identity.ts';
import { useMakeJob } from './assets.ts';
import { blankJob, type JobForm, readJob } from './job-form.ts';
import { JobJoints } from './job-joints.tsx';

interface NewJobFormProps {
  readonly joints: readonly JointListItem[];
  readonly assets: readonly Asset[];
  readonly firstJointId: string | undefined;
}

export function NewJobForm({ joints, assets, firstJointId }: NewJobFormProps) {
  const { t } = useTranslation('lead');
  const who = useWho();
  const navigate = useNavigate();
  const making = useMakeJob();
  const [ids] = useState(() => ({ jobId: newIdentity(), assetId: newIdentity() }));
  const [initial] = useState(() => blankJob(joints, assets, firstJointId));
  const [form, setForm] = useState(initial);
  const [isAskedFor, setAskedFor] = useState(false);
  const { job, faults } = readJob(form, joints, assets, ids);
  const make = async (event: FormEvent) => {
    event.preventDefault();
    setAskedFor(true);
    if (!job || !(await who.ask())) return;
    const made = await making.mutateAsync(job).catch(() => undefined);
    if (made) await navigate({ to: '/jobs/$jobId', params: { jobId: job.id }, ignoreBlocker: true });
  };
  return (
    <FaultsProvider faults={faults} isAskedFor={isAskedFor}>
      <form onSubmit={(event) => void make(event)}>
        <WhatFor form={form} assets={assets} onChange={setForm} />
        <JobJoints form={form} joints={joints} onChange={setForm} />
        {making.isError ? <Trouble error={making.error} /> : null}
        <Button kind="primary" type="submit" isDisabled={making.isPending}>
          {t('new-job.make')}
        </Button>
      </form>
      <LeaveGuard isDirty={form !== initial && !making.isSuccess} />
    </FaultsProvider>
  );
}

interface WhatForProps {
  readonly form: JobForm;
  readonly assets: readonly Asset[];
  readonly onChange: (form: JobForm) => void;
}

function WhatFor({ form, assets, onChange }: WhatForProps) {
  const { t } = useTranslation('lead');
  const known = assets.map((asset) => ({
    value: asset.id,
    label: asset.location === '' ? asset.name : `${asset.name}, ${asset.location}`,
  }));
  return (
    <Sheet title={t('new-job.what')}>
      <div className="field-row">
        <FormText
          field="title"
          label={t('new-job.job-title')}
          hint={t('new-job.job-title-hint')}
          value={form.title}
          onChange={(title) => onChange({ ...form, title })}
        />
        <Select
          label={t('new-job.asset')}
          value={form.assetId}
          options={[...known, { value: '', label: t('new-job.asset-new') }]}
          onChange={(assetId) => onChange({ ...form, assetId })}
        />
        {form.assetId === '' ? (
          <>
            <FormText
              field="assetName"
              label={t('new-job.asset-name')}
              value={form.assetName}
              onChange={(assetName) => onChange({ ...form, assetName })}
            />
            <FormText
              field="assetLocation"
              label={t('new-job.asset-location')}
              value={form.assetLocation}
              onChange={(assetLocation) => onChange({ ...form, assetLocation })}
            />
          </>
        ) : null}
      </div>
    </Sheet>
  );
}
