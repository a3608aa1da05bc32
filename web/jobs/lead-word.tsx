import type { Person } from '@clampwright/server/contract';
import { useQuery } from '@tanstack/react-query';
import { useTranslation } from 'react-i18next';
import { peopleQuery, usePerson } from '../app/session.ts';
import { Select } from '../parts/select.tsx';
import { TextField } from '../parts/text-field.tsx';
import type { LeadWord } from './use-command.ts';

/** Whether the lead's word can be sent: given in the fields, or not needed because a lead works here. */
export const isWordGiven = (person: Person | null | undefined, word: LeadWord): boolean =>
  person?.role === 'lead' || (word.personId !== '' && word.pin !== '');

/** What is sent: nothing where the lead works here. */
export const wordToSend = (person: Person | null | undefined, word: LeadWord): LeadWord | undefined =>
  person?.role === 'lead' ? undefined : word;

interface LeadWordFieldsProps {
  readonly word: LeadWord;
  readonly onChange: (word: LeadWord) => void;
}

/** A lead and the lead's PIN, at somebody else's screen. */
export function LeadWordFields({ word, onChange }: LeadWordFieldsProps) {
  const { t } = useTranslation();
  const person = usePerson();
  const people = useQuery(peopleQuery);
  if (person?.role === 'lead') return <p>{t('lead.you', { name: person.name })}</p>;
  const leads = people.data?.filter(({ role }) => role === 'lead') ?? [];
  return (
    <div className="field-row">
      <Select
        label={t('lead.name')}
        value={word.personId}
        onChange={(personId) => onChange({ ...word, personId })}
        options={[{ value: '', label: t('lead.choose') }, ...leads.map(({ id, name }) => ({ value: id, label: name }))]}
      />
      <TextField
        label={t('lead.pin')}
        value={word.pin}
        onChange={(pin) => onChange({ ...word, pin })}
        type="password"
        inputMode="numeric"
        size="narrow"
      />
    </div>
  );
}
