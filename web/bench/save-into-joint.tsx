import { useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { beginningFrom } from '../joints/derive/beginning.ts';
import { jointsQuery } from '../joints/joints.ts';
import { Button } from '../parts/button.tsx';
import { Select } from '../parts/select.tsx';
import { newIdentity } from '../work/identity.ts';

const NEW = 'new';

/** Takes what was worked out along into the editor of a joint, where it becomes a target with its window. */
export function SaveIntoJoint({ input }: { readonly input: Readonly<Record<string, unknown>> }) {
  const { t } = useTranslation('lead');
  const navigate = useNavigate();
  const joints = useQuery(jointsQuery);
  const [freshId] = useState(newIdentity);
  const [chosen, setChosen] = useState<string>(NEW);
  const derive = beginningFrom(input);
  if (!derive) return null;
  const go = () => {
    const search = chosen === NEW ? { isNew: true as const, derive } : { derive };
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
        hint={t('bench.save.text')}
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
