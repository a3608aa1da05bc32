import { Link, type LinkProps, useRouterState } from '@tanstack/react-router';
import { useEffect, useRef } from 'react';
import { useTranslation } from 'react-i18next';
import { Mark } from './mark.tsx';
import { WhoButton } from './who-button.tsx';

const PLACES = [
  { to: '/', word: 'place.today' },
  { to: '/jobs', word: 'place.jobs' },
  { to: '/joints', word: 'place.joints' },
  { to: '/wrenches', word: 'place.wrenches' },
  { to: '/records', word: 'place.records' },
  { to: '/bench', word: 'place.bench' },
  { to: '/workshop', word: 'place.workshop' },
] as const satisfies readonly { readonly to: LinkProps['to']; readonly word: string }[];

/** A recall is of a wrench, though its address stands by itself. */
const isUnder = (path: string, place: string) =>
  place === '/' ? path === '/' : path.startsWith(place) || (place === '/wrenches' && path.startsWith('/recalls'));

/** The six places and the workshop: a strip of words, or on a narrow screen one button that unfolds them. */
export function PlacesBar() {
  const { t } = useTranslation();
  const list = useRef<HTMLElement>(null);
  const path = useRouterState({ select: (state) => state.location.pathname });
  const here = PLACES.find((place) => isUnder(path, place.to));
  useEffect(() => {
    if (path && list.current?.matches(':popover-open')) list.current.hidePopover();
  }, [path]);
  return (
    <header className="bar">
      <Link to="/" className="bar-name" aria-label={t('shell.home')}>
        <Mark />
        <span className="bar-word">{t('shell.name')}</span>
      </Link>
      <button type="button" className="bar-unfold" popoverTarget="places">
        <span>{here ? t(here.word) : t('shell.places')}</span>
        <svg aria-hidden="true" viewBox="0 0 12 8">
          <path d="M1 1 L6 6.5 L11 1" />
        </svg>
      </button>
      <nav id="places" ref={list} popover="auto" className="bar-places" aria-label={t('shell.places')}>
        <ul>
          {PLACES.map((place) => (
            <li key={place.to} className={place.to === '/workshop' ? 'bar-apart' : undefined}>
              <Link
                to={place.to}
                activeOptions={{ exact: place.to === '/' }}
                className="bar-place"
                aria-current={place === here ? 'page' : undefined}
              >
                {t(place.word)}
              </Link>
            </li>
          ))}
        </ul>
      </nav>
      <WhoButton />
    </header>
  );
}
