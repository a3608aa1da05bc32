import { LANGUAGES, type Language } from '@clampwright/core/quantity';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { chooseLanguage, useLanguage } from '../app/language.ts';
import { chooseTheme, chosenTheme, THEMES } from '../app/theme.ts';
import { Choice } from '../parts/choice.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { SignalChoice } from '../work/signal-choice.tsx';
import { chooseSignals, chosenSignals } from '../work/signals.ts';

/** Each language by its own name, so that whoever reads only that one finds it. */
const NAMES = { en: 'English', de: 'Deutsch', fr: 'Français', es: 'Español' } as const satisfies Record<
  Language,
  string
>;

/** What is chosen for this device alone. */
export function DeviceSettings() {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [theme, setTheme] = useState(chosenTheme);
  const [signals, setSignals] = useState(chosenSignals);
  return (
    <Sheet title={t('workshop.device')}>
      <p className="soft">{t('workshop.device-about')}</p>
      <div className="setting">
        <p className="setting-name">{t('workshop.language')}</p>
        <Choice
          label={t('workshop.language')}
          value={language}
          options={LANGUAGES.map((value) => ({ value, label: NAMES[value] }))}
          onChange={(chosen) => void chooseLanguage(chosen)}
        />
      </div>
      <div className="setting">
        <p className="setting-name">{t('workshop.theme')}</p>
        <Choice
          label={t('workshop.theme')}
          value={theme}
          options={THEMES.map((value) => ({ value, label: t(`workshop.theme-${value}`) }))}
          onChange={(chosen) => {
            setTheme(chosen);
            chooseTheme(chosen);
          }}
        />
      </div>
      <SignalChoice
        signals={signals}
        onChange={(chosen) => {
          setSignals(chosen);
          chooseSignals(chosen);
        }}
      />
    </Sheet>
  );
}
