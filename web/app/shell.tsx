import { Outlet } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { PlacesBar } from './places-bar.tsx';
import { WhoProvider } from './who.tsx';

/** Paper, the strip of places above it, and whoever is working. */
export function Shell() {
  const { t } = useTranslation();
  return (
    <WhoProvider>
      <a className="skip" href="#place">
        {t('shell.skip')}
      </a>
      <PlacesBar />
      <main id="place" className="place" tabIndex={-1}>
        <Outlet />
      </main>
    </WhoProvider>
  );
}
