import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** Rules of WCAG 2.2 AA that a page as it stands breaks, as far as a program can tell; axe-core is the judge. */
export async function brokenRules(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}
