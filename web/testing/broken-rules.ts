import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/**
 * Rules of WCAG 2.2 AA that a page breaks, as far as a program can tell; axe-core is the judge. Colours that are still
 * on their way from one theme to the other are waited for.
 */
export async function brokenRules(page: Page): Promise<readonly string[]> {
  await page.evaluate(async () => {
    const passing = document.getAnimations().filter(({ effect }) => effect?.getComputedTiming().endTime !== Infinity);
    await Promise.allSettled(passing.map(({ finished }) => finished));
  });
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}
