import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { specSheet } from '../../geometry/command/make-order.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { planPlates } from '../../geometry/pipeline/plan-plates.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { makeFiles } from '../../web/worker/make-files.ts';
import { smallDesign } from '../order-file/sound-order.ts';
import { readPdf } from '../readers/pdf-reader.ts';

/** The page's addresses of its own files, read from the disk. */
vi.stubGlobal('fetch', async (address: string) => {
  const path = address.startsWith('/@fs/') ? address.slice(4) : join(process.cwd(), address);
  return new Response(new Uint8Array(await readFile(path)));
});

describe('the spec sheet', () => {
  it('is the same from page and command, letters beyond Latin-1 too', { timeout: 60_000 }, async () => {
    const design: Design = { ...smallDesign('OAK'), title: 'Łódź' };
    const { faces } = await loadFaces(design);
    const made = await makeFiles(
      design,
      [{ kind: 'spec-sheet' }],
      (d, id, book) => Promise.resolve({ plate: makePlate(d, id, faces, createStore(), book) }),
      BUILT_IN,
    );
    if (!('files' in made)) throw new Error('the page made none');
    const bytes = made.files[0]!.bytes;
    expect((await readPdf(bytes)).texts.map(({ text }) => text).join('')).toContain('Łódź');
    const planned = planPlates(design, faces, createStore(), BUILT_IN);
    expect(Buffer.compare(bytes, await specSheet(design, planned, BUILT_IN))).toBe(0);
  });
});
