import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, type TestInfo } from '@playwright/test';
import { addHalf, goTo, openFirst, openPage, test, worked } from './walk.ts';

/** WCAG 2.0 to 2.2, levels A and AA, as axe-core names its rules. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
const DESK = { viewport: { width: 1440, height: 900 } };

/** What axe-core (an outside judge of the WCAG's rules) finds in every state, by day and by night, small and large. */
for (const [device, settings] of [
  ['phone', PHONE],
  ['desktop', DESK],
] as const) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test.describe(`${device}, ${colorScheme}`, () => {
      test.use({ ...settings, colorScheme });
      const tag = (device === 'phone') === (colorScheme === 'light') ? [] : '@long';

      test(`axe finds no fault in any state, ${device}, ${colorScheme}`, { tag }, async ({ page }, info) => {
        test.slow();
        // Of the same page in other colours only the colours can be at fault.
        const only = (device === 'phone') === (colorScheme === 'light') ? undefined : ['color-contrast'];
        const judge = (on: Page, about: TestInfo, state: string) => judgeState(on, about, state, only);
        await openFirst(page);
        await judge(page, info, 'beginnings');
        await page.getByRole('button', { name: 'A link', exact: true }).click();
        await judge(page, info, 'begin with a link');
        await page.getByRole('button', { name: 'A name over a motif' }).click();
        await worked(page);
        await judge(page, info, 'questions of a beginning');
        await page.getByRole('button', { name: 'Show me the barrel' }).click();
        await expect(page.getByRole('img', { name: /^Barrel with the plate/ })).toBeVisible();
        await judge(page, info, 'on the barrel');
        await page.getByRole('button', { name: 'Fine, next: size' }).click();
        await judge(page, info, 'size, from the table');
        await page.getByRole('button', { name: 'Now I have measured it' }).click();
        await openFolds(page);
        await judge(page, info, 'size, measured, all folds open');
        await goTo(page, 'say');
        await worked(page);
        await openFolds(page);
        await judge(page, info, 'say, all folds open');
        await goTo(page, 'look');
        await judge(page, info, 'look');
        await goTo(page, 'take');
        await worked(page);
        await openFolds(page);
        await judge(page, info, 'take');
        const findings = page.getByRole('button', { name: /Show findings|notes?$/ });
        if (await findings.isVisible()) {
          await findings.click();
          await judge(page, info, 'findings');
        }
        const bridges = page.getByRole('button', { name: 'Bridges', exact: true });
        await bridges.click();
        await judge(page, info, 'bridges by hand');
        await bridges.click();
        await page.getByRole('button', { name: 'My designs' }).click();
        await expect(page.getByRole('dialog')).toBeVisible();
        await judge(page, info, 'my designs');
      });
    });
  }
}

/** The page for production, all its folds open, planned with marks and a plate chosen. */
for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`the page Cut, ${colorScheme}`, () => {
    test.use({ ...PHONE, colorScheme });
    test(`axe finds no fault on the page Cut, ${colorScheme}`, { tag: '@long' }, async ({ page }, info) => {
      test.slow();
      await openPage(page);
      await addHalf(page);
      await page.goto('/?page=cut');
      const status = page.getByTestId('cut-status');
      await expect(status).toHaveText('2 plates on 1 sheet.', { timeout: 120_000 });
      await openFolds(page);
      await page.getByText('Cut witness marks').click();
      await judgeState(page, info, 'placed', undefined);
      await page.getByRole('button', { name: 'Plan the cuts' }).click();
      await expect(status).toHaveText(/Planned\.$/, { timeout: 120_000 });
      await page.getByRole('button', { name: /^Plate A1#1,/ }).focus();
      await page.getByText('Heat', { exact: true }).click();
      await page
        .getByRole('region', { name: 'Pieces that drop out' })
        .getByRole('button', { expanded: false })
        .first()
        .click();
      await expect(page.getByRole('row', { name: /^Total/ })).toBeVisible();
      await judgeState(page, info, 'planned', undefined);
    });
  });
}

/** A price or a note that comes late moves fields half under the bar of buttons: what is a fault stays one when it is looked at again. */
async function judgeState(page: Page, info: TestInfo, state: string, only: string[] | undefined): Promise<void> {
  let faults: string[] = [];
  for (let look = 0; look < 4; look++) {
    await scrollToEnd(page);
    // Colours on their way from one state to the next are nobody's contrast.
    await page.waitForTimeout(300);
    const axe = new AxeBuilder({ page });
    const { violations, passes } = await (only ? axe.withRules(only) : axe.withTags(RULES)).analyze();
    faults = violations.map(
      ({ id, help, nodes }) => `${id}: ${help} (${nodes.map(({ target }) => target.join(' ')).join('; ')})`,
    );
    if (faults.length > 0 && look < 3) continue;
    const description = `${state}: ${faults.length} of ${passes.length + faults.length}`;
    info.annotations.push({ type: 'axe', description });
    break;
  }
  expect.soft(faults, state).toEqual([]);
}

async function openFolds(page: Page): Promise<void> {
  await page.locator('details').evaluateAll((all) => {
    for (const fold of all) (fold as HTMLDetailsElement).open = true;
  });
  await scrollToEnd(page);
}

/** The bar with the way on lies over what is scrolled half under it; at the end nothing is. Parts that come late move the end. */
async function scrollToEnd(page: Page): Promise<void> {
  await expect
    .poll(
      async () => {
        const moved = await page.evaluate(
          () =>
            [...document.querySelectorAll('*')].filter((box) => {
              if (!/auto|scroll/.test(getComputedStyle(box).overflowY)) return false;
              const from = box.scrollTop;
              box.scrollTo({ top: box.scrollHeight, behavior: 'instant' });
              return box.scrollTop !== from;
            }).length,
        );
        await page.waitForTimeout(250);
        return moved;
      },
      { intervals: [0] },
    )
    .toBe(0);
}
