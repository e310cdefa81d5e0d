import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { build } from 'vite';
import { writeSpecSheet } from '../../../geometry/files/paper/spec-sheet.ts';
import { writeProof } from '../../../geometry/proof/write-proof.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { asked, fonts, QUOTE, SHOP, shipped } from '../../proof/set-up.ts';
import type { Measured } from '../claim.ts';
import { NO_BROWSER } from '../page/serve-page.ts';

/** Proof and spec sheet written by the code as it is bundled for browsers, in one, against those written here. */
export async function sameInBrowser(): Promise<Measured> {
  const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
  if (!existsSync(executablePath)) return NO_BROWSER;
  const { design, plates } = await shipped('golden-wedding');
  const wishes = asked({ design, plates, tiles: true, quote: QUOTE, shop: SHOP });
  const here = [await writeProof(wishes, fonts), await writeSpecSheet(design, plates, fonts, BUILT_IN)];
  const code = await bundled();
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const page = await browser.newPage({ timezoneId: 'Asia/Kathmandu', locale: 'de-DE' });
    // An address of its own, from nowhere: what is bundled asks where it is.
    await page.route('**/*', (route) =>
      route.request().url().endsWith('.js')
        ? route.fulfill({ contentType: 'text/javascript', body: code })
        : route.fulfill({ contentType: 'text/html', body: '<!doctype html>' }),
    );
    await page.goto('http://papers.test/');
    const given = [
      JSON.stringify(wishes),
      ...[fonts.regular, fonts.bold].map((f) => Buffer.from(f).toString('base64')),
    ];
    const there = await page.evaluate(async (texts: string[]) => {
      type Writer = (...texts: string[]) => Promise<string[]>;
      const address = '/papers.js';
      const papers = (await import(address)) as { papersInBrowser: Writer };
      return papers.papersInBrowser(...texts);
    }, given);
    const same = here.map((bytes, i) => Buffer.from(bytes).equals(Buffer.from(there[i] ?? '', 'base64')));
    return { value: `${same.filter(Boolean).length} of 2`, unit: 'papers', ok: same.every(Boolean) };
  } finally {
    await browser.close();
  }
}

/** As one module. */
async function bundled(): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: 'error',
    define: { 'process.env.NODE_ENV': '"production"' },
    build: {
      write: false,
      lib: { entry: 'tests/figures/proof/in-browser.ts', formats: ['es'] },
    },
  });
  const [first] = Array.isArray(made) ? made : [made];
  if (!first || !('output' in first)) throw new Error('nothing was bundled');
  return first.output[0].code;
}
