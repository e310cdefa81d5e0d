import type { KerningTable } from '../geometry/adapters/face.ts';
import type { FaceEntry } from './catalogue.ts';
import { createFaceStore, loadFacesWith } from './load-faces.ts';
import { unpackInBrowser } from './unpack-in-browser.ts';
import type { FaceFetcher, FacesWanted, LoadedFaces } from './load-faces.ts';

/** Faces in the browser, page and worker alike: only the files of the faces asked for are fetched. */
export function loadFaces(design: FacesWanted, moreText = ''): Promise<LoadedFaces> {
  return loadFacesWith(fetcher, store, design, moreText);
}

/** Address of a face's font file, for a CSS font-face rule that shows its name in itself. */
export function faceUrl(entry: FaceEntry): string | undefined {
  return FONT_URLS[fontKey(entry)];
}

/** The bundler wants plain texts here; a test holds this list against the catalogue. */
const FONT_URLS = import.meta.glob<string>(
  [
    '../node_modules/@fontsource/stardos-stencil/files/stardos-stencil-latin-400-normal.woff',
    '../node_modules/@fontsource/stardos-stencil/files/stardos-stencil-latin-700-normal.woff',
    '../node_modules/@fontsource/saira-stencil-one/files/saira-stencil-one-latin-400-normal.woff',
    '../node_modules/@fontsource/big-shoulders-stencil/files/big-shoulders-stencil-latin-400-normal.woff',
    '../node_modules/@fontsource/big-shoulders-stencil/files/big-shoulders-stencil-latin-700-normal.woff',
    '../node_modules/@fontsource/big-shoulders-stencil/files/big-shoulders-stencil-latin-900-normal.woff',
    '../node_modules/@fontsource/big-shoulders-stencil-display/files/big-shoulders-stencil-display-latin-700-normal.woff',
    '../node_modules/@fontsource/big-shoulders-stencil-text/files/big-shoulders-stencil-text-latin-700-normal.woff',
    '../node_modules/@fontsource/black-ops-one/files/black-ops-one-latin-400-normal.woff',
    '../node_modules/@fontsource/allerta-stencil/files/allerta-stencil-latin-400-normal.woff',
    '../node_modules/@fontsource/stick-no-bills/files/stick-no-bills-latin-400-normal.woff',
    '../node_modules/@fontsource/stick-no-bills/files/stick-no-bills-latin-700-normal.woff',
    '../node_modules/@fontsource/sirin-stencil/files/sirin-stencil-latin-400-normal.woff',
    '../node_modules/@fontsource/keania-one/files/keania-one-latin-400-normal.woff',
    '../node_modules/@fontsource/emblema-one/files/emblema-one-latin-400-normal.woff',
    '../node_modules/@fontsource/plaster/files/plaster-latin-400-normal.woff',
    '../node_modules/@fontsource/wallpoet/files/wallpoet-latin-400-normal.woff',
    '../node_modules/@fontsource/playfair-display/files/playfair-display-latin-700-normal.woff',
    '../node_modules/@fontsource/libre-caslon-text/files/libre-caslon-text-latin-700-normal.woff',
    '../node_modules/@fontsource/old-standard-tt/files/old-standard-tt-latin-700-normal.woff',
    '../node_modules/@fontsource/cinzel/files/cinzel-latin-700-normal.woff',
    '../node_modules/@fontsource/marcellus/files/marcellus-latin-400-normal.woff',
    '../node_modules/@fontsource/im-fell-english-sc/files/im-fell-english-sc-latin-400-normal.woff',
    '../node_modules/@fontsource/alfa-slab-one/files/alfa-slab-one-latin-400-normal.woff',
    '../node_modules/@fontsource/zilla-slab/files/zilla-slab-latin-700-normal.woff',
    '../node_modules/@fontsource/bree-serif/files/bree-serif-latin-400-normal.woff',
    '../node_modules/@fontsource/graduate/files/graduate-latin-400-normal.woff',
    '../node_modules/@fontsource/abril-fatface/files/abril-fatface-latin-400-normal.woff',
    '../node_modules/@fontsource/cinzel-decorative/files/cinzel-decorative-latin-700-normal.woff',
    '../node_modules/@fontsource/limelight/files/limelight-latin-400-normal.woff',
    '../node_modules/@fontsource/uncial-antiqua/files/uncial-antiqua-latin-400-normal.woff',
    '../node_modules/@fontsource/berkshire-swash/files/berkshire-swash-latin-400-normal.woff',
    '../node_modules/@fontsource/bebas-neue/files/bebas-neue-latin-400-normal.woff',
    '../node_modules/@fontsource/league-gothic/files/league-gothic-latin-400-normal.woff',
    '../node_modules/@fontsource/oswald/files/oswald-latin-700-normal.woff',
    '../node_modules/@fontsource/great-vibes/files/great-vibes-latin-400-normal.woff',
    '../node_modules/@fontsource/unifrakturcook/files/unifrakturcook-latin-700-normal.woff',
  ],
  { query: '?url', import: 'default', eager: true },
);

const KERNING = import.meta.glob<KerningTable>('./kerning/*.json', { import: 'default' });

/** A face that does not come is said to be missing, and the plate is made without it. */
const PATIENCE_MS = 20_000;

const store = createFaceStore();

const fetcher: FaceFetcher = {
  async motifs({ elements }) {
    if (!elements.some(({ kind }) => kind === 'motif')) return () => undefined;
    return (await import('../geometry/motifs/catalogue.ts')).motifById;
  },
  font: (entry) => fetchFile(FONT_URLS[fontKey(entry)], entry),
  async further(entry) {
    const { furtherUrl } = await import('./browser-further.ts');
    return fetchFile(furtherUrl(entry), entry);
  },
  kerning(entry) {
    const load = KERNING[`./kerning/${entry.id}.json`];
    return load ? load() : Promise.reject(new Error(`no kerning for ${entry.id}`));
  },
};

async function fetchFile(url: string | undefined, { id }: FaceEntry): Promise<Uint8Array> {
  if (url === undefined) throw new Error(`no address for ${id}`);
  const answer = await fetch(url, { signal: AbortSignal.timeout(PATIENCE_MS) });
  if (!answer.ok) throw new Error(`${answer.status} for ${id}`);
  return unpackInBrowser(new Uint8Array(await answer.arrayBuffer()));
}

function fontKey(entry: FaceEntry): string {
  return `../node_modules/${entry.packageName}/${entry.file}`;
}
