import type { Language } from '@clampwright/core/quantity';

const PLACES: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de-DE', fr: 'fr-FR', es: 'es-ES' };

/** A day in words, in this device's time zone: `Tuesday 25 November 2025`. */
export const showDay = (at: Date, language: Language): string =>
  new Intl.DateTimeFormat(PLACES[language], { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' }).format(
    at,
  );

/** A date as kept, such as `2025-11-25`, in words. */
export const showDate = (isoDate: string, language: Language): string =>
  new Intl.DateTimeFormat(PLACES[language], { dateStyle: 'medium', timeZone: 'UTC' }).format(
    new Date(`${isoDate.slice(0, 10)}T00:00:00Z`),
  );

/** An instant in this device's time zone: `25 Nov 2025, 14:05`. */
export const showInstant = (iso: string, language: Language): string =>
  new Intl.DateTimeFormat(PLACES[language], { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(iso));
