import { useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { Brought } from '../joints/brought/brought.ts';
import { jointsQuery } from '../joints/joints.ts';
import { Button } from '../parts/button.tsx';
import { Select } from '../parts/select.tsx';
import { newIdentity } from '../work/identity.ts';

const NEW = 'new';

interface SaveIntoJointProps {
  /** Name of the calculation as the page has it. */
  readonly calculation: string;
  readonly brought: Brought;
}

/** Takes what was worked out along into the editor of a joint, where it becomes a target with its window. */
export function SaveIntoJoint({ calculation, brought }: SaveIntoJointProps) {
  const { t } = useTranslation('lead');
  const navigate = useNavigate();
  const joints = useQuery(jointsQuery);
  const [freshId] = useState(newIdentity);
  const [chosen, setChosen] = useState<string>(NEW);
  const go = () => {
    const fastener = [brought.thread, brought.propertyClass].filter((part) => part !== undefined).join(' ');
    const bring = brought.stage
      ? { ...brought, sourceText: t('bench.save.source', { calculation, fastener }) }
      : brought;
    const search = chosen === NEW ? { isNew: true as const, bring } : { bring };
    void navigate({ to: '/joints/$jointId/edit', params: { jointId: chosen === NEW ? freshId : chosen }, search });
  };
  const options = [
    { value: NEW, label: t('bench.save.new') },
    ...(joints.data ?? []).map(({ id, name }) => ({ value: id, label: name })),
  ];
  return (
    <section className="save-into-joint" aria-label={t('bench.save.title')}>
      <Select
        label={t('bench.save.title')}
        hint={t(brought.stage ? 'bench.save.fills' : 'bench.save.text')}
        value={chosen}
        options={options}
        onChange={setChosen}
      />
      <div className="actions">
        <Button onPress={go}>{t('bench.save.go')}</Button>
      </div>
    </section>
  );
}
