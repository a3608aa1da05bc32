import type { Person } from '@clampwright/server/contract';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button, buttonClass } from '../parts/button.tsx';
import { Dialog, DialogActions } from '../parts/dialog.tsx';
import { Select } from '../parts/select.tsx';
import { Loading, Trouble } from '../parts/states.tsx';
import { TextField } from '../parts/text-field.tsx';
import { peopleQuery, usePerson, useSignIn, useSignOut } from './session.ts';

/** “Who is working?”: a name and a PIN. */
export default function SignInDialog({ onDone }: { readonly onDone: (person: Person | null) => void }) {
  const { t } = useTranslation();
  const people = useQuery(peopleQuery);
  const present = usePerson();
  const signOut = useSignOut();
  return (
    <Dialog title={t('who.title')} onClose={() => onDone(null)}>
      <p>{t('who.why')}</p>
      {people.isPending ? <Loading /> : null}
      {people.isError ? <Trouble error={people.error} onRetry={() => void people.refetch()} /> : null}
      {people.data?.length === 0 ? <NobodyYet onClose={() => onDone(null)} /> : null}
      {people.data && people.data.length > 0 ? <SignInForm people={people.data} onDone={onDone} /> : null}
      {present ? (
        <p className="who-leave">
          {t('who.now', { name: present.name })}{' '}
          <Button kind="quiet" onPress={() => signOut.mutate(undefined, { onSuccess: () => onDone(null) })}>
            {t('who.sign-out')}
          </Button>
        </p>
      ) : null}
    </Dialog>
  );
}

function NobodyYet({ onClose }: { readonly onClose: () => void }) {
  const { t } = useTranslation();
  return (
    <>
      <p>{t('who.nobody')}</p>
      <DialogActions>
        <Link to="/workshop" className={buttonClass('primary')} onClick={onClose}>
          {t('who.to-workshop')}
        </Link>
      </DialogActions>
    </>
  );
}

function SignInForm(props: { readonly people: readonly Person[]; readonly onDone: (person: Person | null) => void }) {
  const { t } = useTranslation();
  const signIn = useSignIn();
  const [personId, setPersonId] = useState(props.people[0]?.id ?? '');
  const [pin, setPin] = useState('');
  const isDemo = props.people.some((person) => person.id === personId && person.demo);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    signIn.mutate({ personId, pin }, { onSuccess: (session) => props.onDone(session.person) });
  };
  return (
    <form onSubmit={submit}>
      <Select
        label={t('who.name')}
        value={personId}
        onChange={setPersonId}
        options={props.people.map((person) => ({
          value: person.id,
          label: t('who.person', { name: person.name, role: t(`role.${person.role}`) }),
        }))}
      />
      <TextField
        label={t('who.pin')}
        hint={isDemo ? t('who.demo-pin') : undefined}
        value={pin}
        onChange={setPin}
        type="password"
        inputMode="numeric"
      />
      {signIn.isError ? <Trouble error={signIn.error} /> : null}
      <DialogActions>
        <Button kind="primary" type="submit" isDisabled={pin === '' || signIn.isPending}>
          {t('who.begin')}
        </Button>
        <Button onPress={() => props.onDone(null)}>{t('who.only-look')}</Button>
      </DialogActions>
    </form>
  );
}
