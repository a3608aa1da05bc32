import { LANGUAGES, type Language } from '@clampwright/core/quantity';
import { type BackendModule, createInstance } from 'i18next';
import { initReactI18next, useTranslation } from 'react-i18next';
import { firstLanguage } from './first-language.ts';

const KEY = 'clampwright.language';

/** A catalogue a half and language; each is fetched when a screen first asks for it. */
const catalogues = import.meta.glob<{ default: Record<string, unknown> }>('../words/*.json');

const words = createInstance();

const fromFiles: BackendModule = {
  type: 'backend',
  init: () => undefined,
  read: (language, half, done) => {
    const load = catalogues[`../words/${half}.${language}.json`];
    if (!load) return done(new Error(`no catalogue ${half}.${language}`), false);
    // oxlint-disable promise/no-callback-in-promise -- the words are asked for by callback
    load().then(
      (file) => done(null, file.default),
      (reason: unknown) => done(reason instanceof Error ? reason : new Error(String(reason)), true),
    );
    // oxlint-enable promise/no-callback-in-promise
  },
};

/** Makes the words ready; the page is shown after it. */
export async function beginWords(): Promise<void> {
  const language = firstLanguage(localStorage.getItem(KEY), navigator.languages);
  document.documentElement.lang = language;
  await words
    .use(fromFiles)
    .use(initReactI18next)
    .init({
      lng: language,
      supportedLngs: [...LANGUAGES],
      fallbackLng: false,
      ns: ['technician'],
      defaultNS: 'technician',
      interpolation: { escapeValue: false },
      returnNull: false,
    });
}

/** Changes the language at once and keeps it for this device. */
export async function chooseLanguage(language: Language): Promise<void> {
  localStorage.setItem(KEY, language);
  document.documentElement.lang = language;
  await words.changeLanguage(language);
}

/** The language on screen, for reading and showing numbers. */
export function useLanguage(): Language {
  const { i18n } = useTranslation();
  return LANGUAGES.find((language) => language === i18n.language) ?? 'en';
}
