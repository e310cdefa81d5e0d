import { expect, type Page } from '@playwright/test';
import { approve } from '../geometry/approval/approve.ts';
import { fingerprintOf } from '../geometry/design/fingerprint.ts';
import { demo } from '../tests/approval/demos.ts';
import { packDesign } from '../web/handover/link/pack-design.ts';
import { goTo, test, worked } from './walk.ts';

const WEDDING = demo('golden-wedding');
const FINGERPRINT = fingerprintOf(WEDDING);
const APPROVED = approve(WEDDING, { name: 'Ada Pell', at: '2027-01-04', how: 'link', fingerprint: FINGERPRINT });

async function openApproved(page: Page): Promise<void> {
  const packed = packDesign(APPROVED);
  if (!('fragment' in packed)) throw new Error(packed.problem);
  await page.goto(`/${packed.fragment}`);
  await worked(page);
}

/** One letter of the first text. */
async function typeOneLetter(page: Page): Promise<void> {
  await goTo(page, 'say');
  const field = page.getByRole('textbox', { name: 'Ring text, top' });
  await expect(field).toHaveValue('GOLDEN WEDDING');
  await field.fill('GOLDEN WEDDINC');
}

test('an approved design says so, and says at once when it is changed, and what was approved comes back', async ({
  page,
}) => {
  await openApproved(page);
  const standing = page.getByTestId('approval');
  await expect(standing).toHaveText('Approved by Ada Pell, 4 January 2027 (A)');
  await typeOneLetter(page);
  await expect(standing).toHaveText('Changed since Ada Pell approved it (A, 4 January 2027)');
  await page.getByRole('button', { name: 'What changed' }).click();
  await expect(page.getByText('The text “GOLDEN WEDDING” is now “GOLDEN WEDDINC”.')).toBeVisible();

  await page.getByRole('button', { name: 'Cut', exact: true }).click();
  const cut = page.getByTestId('approval');
  await expect(cut).toHaveText('Golden wedding: Changed since Ada Pell approved it (A, 4 January 2027)', {
    timeout: 60_000,
  });
  await page.getByRole('button', { name: 'Design', exact: true }).click();

  await page.getByRole('button', { name: 'Bring back what was approved' }).click();
  await expect(standing).toHaveText('Approved by Ada Pell, 4 January 2027 (A)');
  await expect(page.getByRole('textbox', { name: 'Ring text, top' })).toHaveValue('GOLDEN WEDDING');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(standing).toHaveText(/^Changed since Ada Pell/);
  await expect(page.getByRole('textbox', { name: 'Ring text, top' })).toHaveValue('GOLDEN WEDDINC');
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true });

  test('what changed is told beside the plate, not over it', async ({ page }) => {
    await openApproved(page);
    await typeOneLetter(page);
    await expect(page.getByTestId('approval')).toHaveText(/^Changed since Ada Pell/);
    await worked(page);
    const what = page.getByRole('button', { name: 'What changed' });
    await what.tap();
    const stage = await page.locator('#stage').boundingBox();
    const note = await page.getByRole('region', { name: 'Approval' }).boundingBox();
    expect(stage && note && note.y >= stage.y + stage.height - 1).toBe(true);
    for (const button of [what, page.getByRole('button', { name: 'Bring back what was approved' })]) {
      await expect(button).toBeInViewport({ ratio: 1 });
      expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    }
    await expect(page.getByRole('button', { name: /How does it look/ })).toBeInViewport();
  });
});
