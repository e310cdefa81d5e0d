import { expect, type Locator, type Page } from '@playwright/test';
import { measureDxf, SOUND } from './measure-dxf.ts';
import { downloadBy, figuresOf, openFirst, questionButton, test, verdict, worked, type Question } from './walk.ts';

test('first visit to downloaded cut file, by keyboard alone', async ({ page }) => {
  await openFirst(page);
  // two keys to the questions, and the beginnings stay while one walks over the plate
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the questions' })).toBeFocused();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('list', { name: 'Ready-made' }).getByRole('button').first()).toBeFocused();
  await press(page, page.getByRole('button', { name: 'Golden wedding' }), 'Enter');
  await expect(page.getByRole('heading', { level: 2, name: 'Golden wedding' })).toBeFocused();
  await type(page, page.getByRole('textbox', { name: 'What is celebrated' }), 'fifty years');
  await choose(page, page.getByRole('radio', { name: 'Farm' }));
  await worked(page);
  await expect(page.getByTestId('plate-summary')).toHaveText(/“FIFTY YEARS”/);

  await press(page, page.getByRole('button', { name: 'Show me the barrel' }), 'Enter');
  await expect(page.getByRole('img', { name: /^Barrel with the plate/ })).toBeVisible();
  await press(page, page.getByRole('button', { name: 'Fine, next: size' }), 'Enter');

  await choose(page, page.getByRole('radio', { name: 'I measured it' }));
  await type(page, page.getByRole('textbox', { name: 'Along the boards' }), '480');
  await type(page, page.getByRole('textbox', { name: 'Across the boards' }), '474');
  await choose(page, page.getByRole('radio', { name: 'Char with a torch' }));

  await step(page, 'look');
  await press(page, page.getByRole('button', { name: /^All \d+ faces/ }), 'Enter');
  await choose(page, page.getByRole('radio', { name: /Stardos Stencil/ }).first());
  await worked(page);
  await expect(verdict(page)).toHaveText(/Holds together/);

  await step(page, 'take');
  await worked(page);
  await press(
    page,
    page.getByText('Files for the workshop', { exact: true }).locator('xpath=ancestor-or-self::summary'),
    'Enter',
  );
  const said = await figuresOf(page, 'Large');
  expect(said.diameterMm).toBe(462);
  const button = page.getByRole('button', { name: 'Large: DXF for the cutter' });
  await reach(page, button);
  const dxf = await downloadBy(page, () => page.keyboard.press('Enter'));
  expect(measureDxf(dxf.bytes.toString('utf8'))).toMatchObject({
    ...SOUND,
    rimDiametersMm: [462],
    openings: said.openings,
  });

  await page.keyboard.press('Control+z');
  await worked(page);
});

/** Goes to a control with Tab and Shift+Tab only, as a person would; fails when it cannot be reached. */
async function reach(page: Page, target: Locator): Promise<void> {
  await expect(target).toBeAttached();
  for (const key of ['Tab', 'Shift+Tab']) {
    for (let i = 0; i < 160; i++) {
      if (await target.evaluate((element) => element === document.activeElement)) {
        await expect(target).toBeFocused();
        return;
      }
      await page.keyboard.press(key);
    }
  }
  throw new Error(`the keyboard does not reach ${target.toString()}`);
}

async function press(page: Page, target: Locator, key: string): Promise<void> {
  await reach(page, target);
  await page.keyboard.press(key);
}

async function step(page: Page, question: Question): Promise<void> {
  await press(page, questionButton(page, question), 'Enter');
  await expect(questionButton(page, question)).toHaveAttribute('aria-current', 'step');
}

/** Tab goes to the chosen one of a set of radio buttons, arrows to the others. */
async function choose(page: Page, radio: Locator): Promise<void> {
  const name = (await radio.getAttribute('name')) ?? '';
  const group = page.locator(`input[type=radio][name="${name}"]`);
  const chosen = group.and(page.locator(':checked'));
  await reach(page, (await chosen.count()) > 0 ? chosen : group.first());
  for (let i = 0; i < 60 && !(await radio.isChecked()); i++) {
    const atStart = (await chosen.count()) === 0;
    await page.keyboard.press(atStart ? 'Space' : 'ArrowRight');
  }
  await expect(radio).toBeChecked();
}

async function type(page: Page, field: Locator, text: string): Promise<void> {
  await reach(page, field);
  await page.keyboard.press('Control+a');
  await page.keyboard.type(text);
}
