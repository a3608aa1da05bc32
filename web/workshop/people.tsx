import { say } from '@clampwright/core/language';
import type { Person } from '@clampwright/server/contract';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { addingRule } from './adding-rule.ts';
import { PersonDialog } from './person-dialog.tsx';

interface PeopleProps {
  readonly people: readonly Person[];
  /** Who works at this screen. */
  readonly me: Person | null;
}

/** Everybody who may work here, and in which role. */
export function People({ people, me }: PeopleProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [isAdding, setAdding] = useState(false);
  const rule = addingRule(people, me);
  return (
    <Sheet
      title={t('people.title')}
      side={
        rule === 'refused' ? null : (
          <Button kind={people.length === 0 ? 'primary' : 'plain'} onPress={() => setAdding(true)}>
            {rule === 'first-lead' ? t('people.add-first') : t('people.add')}
          </Button>
        )
      }
    >
      <p className="soft">{rule === 'refused' ? t('people.lead-only') : t(`people.about-${rule}`)}</p>
      {people.length > 0 ? (
        <Ledger label={t('people.title')}>
          {people.map((person) => (
            <LedgerRow
              key={person.id}
              title={person.name}
              facts={[say(language, `role.${person.role}`), ...(person.demo ? [t('common.invented')] : [])]}
            />
          ))}
        </Ledger>
      ) : null}
      {isAdding ? <PersonDialog isFirstLead={rule === 'first-lead'} onClose={() => setAdding(false)} /> : null}
    </Sheet>
  );
}
