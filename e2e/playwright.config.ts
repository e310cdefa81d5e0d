import { defineConfig } from '@playwright/test';
import { fileURLToPath } from 'node:url';

/** Another one lets two runs go side by side. */
const PORT = Number(process.env.JOURNEY_PORT ?? 4473);
const root = fileURLToPath(new URL('..', import.meta.url));
const report = process.env.PLAYWRIGHT_JSON_OUTPUT_NAME;

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.journey.ts',
  outputDir: '../test-results',
  // `npm test` has to end in time on two cores; `npm run journeys` walks all of them.
  grepInvert: /@long/,
  fullyParallel: true,
  workers: 2,
  forbidOnly: !!process.env.CI,
  retries: 0,
  timeout: 240_000,
  expect: { timeout: 30_000 },
  reporter: report ? [['list'], ['json', { outputFile: report }]] : [['list']],
  use: {
    baseURL: `http://127.0.0.1:${PORT}`,
    browserName: 'chromium',
    headless: true,
    viewport: { width: 1280, height: 800 },
    acceptDownloads: true,
    // A button that is gone is told in seconds, not when the whole journey's time is over.
    actionTimeout: 30_000,
    navigationTimeout: 60_000,
    launchOptions: {
      executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
      // Software drawing, whatever Chromium and machine this is, and no talk with the world outside.
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--use-angle=swiftshader',
        '--enable-unsafe-swiftshader',
        '--font-render-hinting=none',
        '--force-color-profile=srgb',
        '--hide-scrollbars',
      ],
    },
    // A trace of every step takes a third of the time; a picture of what failed says enough.
    trace: 'off',
    screenshot: 'only-on-failure',
  },
  // The same server that `npm start` gives a user.
  webServer: {
    command: `node web/serve/start.mjs --port ${PORT}`,
    cwd: root,
    url: `http://127.0.0.1:${PORT}/`,
    reuseExistingServer: false,
    timeout: 120_000,
  },
});
