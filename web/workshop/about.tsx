import { useTranslation } from 'react-i18next';
import about from '../package.json';
import { buttonClass } from '../parts/button.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { TitleBlock } from '../parts/title-block.tsx';

/** What Clampwright is, and where its interface is described. */
export function About({ demoLoaded }: { readonly demoLoaded: boolean }) {
  const { t } = useTranslation('lead');
  const openapi = (
    <a href="/api/v1/openapi.json" className={buttonClass('quiet')}>
      {t('about.openapi')}
    </a>
  );
  return (
    <Sheet title={t('about.title')}>
      <p className="about-text">{t('about.text')}</p>
      <TitleBlock
        cells={[
          { label: t('about.version'), value: about.version },
          { label: t('about.licence'), value: about.license },
          { label: t('about.demo'), value: demoLoaded ? t('about.demo-loaded') : t('about.demo-not-loaded') },
          { label: t('about.interface'), value: openapi },
        ]}
      />
    </Sheet>
  );
}
