import boldUrl from '@fontsource/source-sans-3/files/source-sans-3-latin-600-normal.woff?url';
import regularUrl from '@fontsource/source-sans-3/files/source-sans-3-latin-400-normal.woff?url';
import moreBoldUrl from '@fontsource/source-sans-3/files/source-sans-3-latin-ext-600-normal.woff?url';
import moreRegularUrl from '@fontsource/source-sans-3/files/source-sans-3-latin-ext-400-normal.woff?url';
import type { PageFonts } from '../../geometry/files/paper/pdf-page.ts';

/** Files that do not come in this time are told as a fault. */
const PATIENCE_MS = 30_000;

/** The faces that paper is set in, the same as the command's: one design, the same bytes. */
export async function fetchPaperFonts(): Promise<PageFonts> {
  const urls = [regularUrl, boldUrl, moreRegularUrl, moreBoldUrl] as const;
  const [regular, bold, moreRegular, moreBold] = await Promise.all(urls.map(fetchBytes));
  return { regular: regular!, bold: bold!, more: { regular: moreRegular!, bold: moreBold! } };
}

async function fetchBytes(url: string): Promise<Uint8Array> {
  const answer = await fetch(url, { signal: AbortSignal.timeout(PATIENCE_MS) });
  if (!answer.ok) throw new Error(`${url}: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}
