/** How light or dark the page is: as the device says, or always so. */
export const THEMES = ['device', 'light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];

const KEY = 'clampwright.theme';

/** The theme chosen at this device. */
export function chosenTheme(): Theme {
  const kept = localStorage.getItem(KEY);
  return THEMES.find((theme) => theme === kept) ?? 'device';
}

/** Shows a theme and keeps it for this device. */
export function chooseTheme(theme: Theme): void {
  localStorage.setItem(KEY, theme);
  showTheme(theme);
}

/** Shows a theme; `device` leaves it to the browser. */
export function showTheme(theme: Theme): void {
  if (theme === 'device') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = theme;
}
