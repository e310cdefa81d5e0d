import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { build } from 'vite';
import { writeSpecSheet } from '../../../geometry/files/spec-sheet.ts';
import { writeProof } from '../../../geometry/proof/write-proof.ts';
import { asked, fonts, QUOTE, SHOP, shipped } from '../../proof/set-up.ts';
import type { Measured } from '../claim.ts';
import { NO_BROWSER } from '../page/serve-page.ts';

/** Proof and spec sheet written by the code as it is bundled for browsers, in one, against those written here. */
export async function sameInBrowser(): Promise<Measured> {
  const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
  if (!existsSync(executablePath)) return NO_BROWSER;
  const { design, plates } = await shipped('golden-wedding');
  const wishes = asked({ design, plates, tiles: true, quote: QUOTE, shop: SHOP });
  const here = [await writeProof(wishes, fonts), await writeSpecSheet(design, plates, fonts)];
  const code = await bundled();
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const page = await browser.newPage({ timezoneId: 'Asia/Kathmandu', locale: 'de-DE' });
    await page.addScriptTag({ content: code });
    const given = [
      JSON.stringify(wishes),
      ...[fonts.regular, fonts.bold].map((f) => Buffer.from(f).toString('base64')),
    ];
    const there = await page.evaluate((texts: string[]) => {
      type Writer = (...texts: string[]) => Promise<string[]>;
      return (globalThis as unknown as { papers: { papersInBrowser: Writer } }).papers.papersInBrowser(...texts);
    }, given);
    const same = here.map((bytes, i) => Buffer.from(bytes).equals(Buffer.from(there[i] ?? '', 'base64')));
    return { value: `${same.filter(Boolean).length} of 2`, unit: 'papers', ok: same.every(Boolean) };
  } finally {
    await browser.close();
  }
}

/** As one script that leaves `papers` behind. */
async function bundled(): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      lib: { entry: 'tests/figures/proof/in-browser.ts', formats: ['iife'], name: 'papers' },
    },
  });
  const [first] = Array.isArray(made) ? made : [made];
  if (!first || !('output' in first)) throw new Error('nothing was bundled');
  return first.output[0].code;
}
