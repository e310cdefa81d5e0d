import { test as base, expect, type Page } from '@playwright/test';

/**
 * The journeys' own `test`: whatever a journey does, the page may log no error, throw none, and ask nothing of any
 * machine but this one.
 */
export const test = base.extend<{ clean: string[] }>({
  clean: [
    async ({ page }, use) => {
      const faults: string[] = [];
      page.on('console', (message) => {
        if (message.type() === 'error') faults.push(`console: ${message.text()}`);
      });
      page.on('pageerror', (error) => faults.push(`thrown: ${error.message}`));
      page.context().on('request', (request) => {
        const { protocol, hostname } = new URL(request.url());
        if (/^(https?|wss?):$/.test(protocol) && hostname !== '127.0.0.1') faults.push(`asked ${request.url()}`);
      });
      await use(faults);
      expect(faults).toEqual([]);
    },
    { auto: true },
  ],
});

/** Opens the page and waits until the plate on it has been worked out. */
export async function openPage(page: Page): Promise<void> {
  await page.goto('/');
  await worked(page);
}

/** Waits until the verdict speaks of the design as it now is. */
export async function worked(page: Page): Promise<void> {
  await expect(page.getByText(/Holds together|Cannot be cut yet/).first()).toBeVisible({ timeout: 20_000 });
}
