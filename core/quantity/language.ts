/** Languages of the screens and reports. */
export const LANGUAGES = ['en', 'de', 'fr', 'es'] as const;
export type Language = (typeof LANGUAGES)[number];

/** Narrow no-break space, the separator of three-digit groups of ISO 80000-1:2022, clause 7.3.1. */
export const NARROW_SPACE = '\u202f';

/** How figures are written in a language. `name` is told in refusals. */
export interface NumberStyle {
  readonly name: string;
  readonly decimalSign: '.' | ',';
  /** Comma or point that people of the language put between groups of three digits. */
  readonly groupSign: '.' | ',' | undefined;
}

// Unicode CLDR 45, symbols of the default number system; French groups with spaces alone.
export const NUMBER_STYLES: Readonly<Record<Language, NumberStyle>> = {
  en: { name: 'English', decimalSign: '.', groupSign: ',' },
  de: { name: 'German', decimalSign: ',', groupSign: '.' },
  fr: { name: 'French', decimalSign: ',', groupSign: undefined },
  es: { name: 'Spanish', decimalSign: ',', groupSign: '.' },
};
