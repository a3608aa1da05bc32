import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useWho } from '../app/who.tsx';
import { Button } from '../parts/button.tsx';
import { StateWord } from '../parts/state-word.tsx';
import { Trouble } from '../parts/states.tsx';
import { TextField } from '../parts/text-field.tsx';
import type { Mapping } from './mapping.ts';
import { useSaveMapping } from './sending.ts';
import '../forms/forms.css';

/** Keeps what was told of the columns under a name, for the next file of the same kind. */
export function SaveMapping({ mapping }: { readonly mapping: Mapping }) {
  const { t } = useTranslation('lead');
  const who = useWho();
  const saving = useSaveMapping();
  const [name, setName] = useState('');
  const save = async () => {
    if (await who.ask()) saving.mutate({ ...mapping, name: name.trim() });
  };
  return (
    <>
      <div className="add-line">
        <TextField label={t('import.name')} hint={t('import.name-hint')} value={name} onChange={setName} />
        <Button isDisabled={name.trim() === '' || saving.isPending} onPress={() => void save()}>
          {t('import.save')}
        </Button>
      </div>
      {saving.isSuccess ? <StateWord kind="good">{t('import.saved-now')}</StateWord> : null}
      {saving.isError ? <Trouble error={saving.error} /> : null}
    </>
  );
}
