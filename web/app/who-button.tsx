import { useTranslation } from 'react-i18next';
import { usePerson } from './session.ts';
import { useWho } from './who.tsx';

/** Tells who works at this screen, and lets the next pair of hands take over. */
export function WhoButton() {
  const { t } = useTranslation();
  const person = usePerson();
  const who = useWho();
  if (person === undefined) return <span className="bar-who" />;
  return (
    <button type="button" className="bar-who" onClick={() => void who.change()}>
      {person ? (
        <>
          <span className="bar-who-name">{person.name}</span>
          <span className="bar-who-role">{t(`role.${person.role}`)}</span>
        </>
      ) : (
        <span className="bar-who-name">{t('who.sign-in')}</span>
      )}
    </button>
  );
}
