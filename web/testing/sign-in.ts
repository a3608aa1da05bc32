import type { Page } from 'playwright-core';

/** Answers “Who is working?”, which is open, with the PIN that the dialog tells of everybody of the demonstration. */
export async function signIn(page: Page, nameAndRole: string): Promise<void> {
  const dialog = page.getByRole('dialog', { name: 'Who is working?' });
  await dialog.getByRole('combobox', { name: 'Name' }).selectOption({ label: nameAndRole });
  const told = (await dialog.getByText(/^Somebody of the demonstration/).textContent()) ?? '';
  const pin = /\d{4}/.exec(told)?.[0] ?? '';
  await dialog.getByRole('textbox', { name: 'PIN' }).fill(pin);
  await dialog.getByRole('button', { name: 'Begin' }).click();
  await dialog.waitFor({ state: 'detached' });
}
