import { ROLES } from '@clampwright/core/failure';
import { say } from '@clampwright/core/language';
import type { NewPerson } from '@clampwright/server/contract';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { anything, send } from '../app/api.ts';
import { useLanguage } from '../app/language.ts';
import { peopleQuery, sessionQuery } from '../app/session.ts';
import { useWho } from '../app/who.tsx';
import { FaultsProvider } from '../forms/faults.tsx';
import { FormText } from '../forms/fields.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { KeepActions } from '../parts/keep-actions.tsx';
import { Select } from '../parts/select.tsx';
import { type PersonForm, readPerson } from './person-form.ts';

interface PersonDialogProps {
  /** The first lead is added by whoever begins; nobody can be asked for a name yet. */
  readonly isFirstLead: boolean;
  readonly onClose: () => void;
}

/** Adds somebody who works here. */
export function PersonDialog({ isFirstLead, onClose }: PersonDialogProps) {
  const { t } = useTranslation('lead');
  const who = useWho();
  const adding = useAdding();
  const [form, setForm] = useState<PersonForm>({
    name: '',
    role: isFirstLead ? 'lead' : 'technician',
    pin: '',
    pinAgain: '',
  });
  const [isAskedFor, setAskedFor] = useState(false);
  const { person, faults } = readPerson(form);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setAskedFor(true);
    if (person && (isFirstLead || (await who.ask()))) adding.mutate(person, { onSuccess: onClose });
  };
  return (
    <Dialog title={isFirstLead ? t('people.add-first') : t('people.add')} onClose={onClose}>
      <FaultsProvider faults={faults} isAskedFor={isAskedFor}>
        <form onSubmit={(event) => void submit(event)}>
          <PersonFields form={form} isFirstLead={isFirstLead} onChange={(part) => setForm({ ...form, ...part })} />
          <KeepActions action={t('people.add')} sending={adding} onCancel={onClose} />
        </form>
      </FaultsProvider>
    </Dialog>
  );
}

function useAdding() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (person: NewPerson) => send('POST', '/people', person, anything),
    onSuccess: () =>
      Promise.all([peopleQuery, sessionQuery].map(({ queryKey }) => queries.invalidateQueries({ queryKey }))),
  });
}

interface PersonFieldsProps {
  readonly form: PersonForm;
  readonly isFirstLead: boolean;
  readonly onChange: (part: Partial<PersonForm>) => void;
}

function PersonFields({ form, isFirstLead, onChange }: PersonFieldsProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return (
    <>
      <FormText field="name" label={t('people.name')} value={form.name} onChange={(name) => onChange({ name })} />
      <Select
        label={t('people.role')}
        hint={t(`people.role-${form.role}`)}
        value={form.role}
        isDisabled={isFirstLead}
        options={ROLES.map((value) => ({ value, label: say(language, `role.${value}`) }))}
        onChange={(role) => onChange({ role })}
      />
      <FormText
        type="password"
        inputMode="numeric"
        field="pin"
        label={t('people.pin')}
        hint={t('people.pin-hint')}
        value={form.pin}
        onChange={(pin) => onChange({ pin })}
      />
      <FormText
        type="password"
        inputMode="numeric"
        field="pinAgain"
        label={t('people.pin-again')}
        value={form.pinAgain}
        onChange={(pinAgain) => onChange({ pinAgain })}
      />
    </>
  );
}
