import AxeBuilder from '@axe-core/playwright';
import { expect } from '@playwright/test';
import { goTo, openPage, test, worked, type Question } from './walk.ts';

const QUESTIONS: readonly Question[] = ['say', 'look', 'size', 'take'];
const SERIOUS = ['serious', 'critical'];

/** What axe-core (an outside judge of the WCAG's rules) finds on every question, by day and by night. */
for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(colorScheme, () => {
    test.use({ colorScheme });

    test(`axe finds no serious fault on any question, ${colorScheme}`, async ({ page }, info) => {
      await openPage(page);
      for (const question of QUESTIONS) {
        await goTo(page, question);
        await worked(page);
        const { violations, passes } = await new AxeBuilder({ page }).analyze();
        const faults = violations
          .filter(({ impact }) => SERIOUS.includes(impact ?? ''))
          .map(({ id, help, nodes }) => `${id}: ${help} (${nodes.map(({ target }) => target.join(' ')).join('; ')})`);
        info.annotations.push({ type: 'axe', description: `${faults.length} of ${passes.length + violations.length}` });
        expect.soft(faults, question).toEqual([]);
      }
    });
  });
}
