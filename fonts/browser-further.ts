import type { FaceEntry } from './catalogue.ts';

/** Address of the file with a face's further letters; undefined where it has none. Loaded when a text needs one. */
export function furtherUrl({ packageName, furtherFile }: FaceEntry): string | undefined {
  return furtherFile === undefined ? undefined : FURTHER_URLS[`../node_modules/${packageName}/${furtherFile}`];
}

/** The bundler wants plain texts here; a test holds this list against the catalogue. */
const FURTHER_URLS = import.meta.glob<string>(
  [
    '../node_modules/@fontsource/saira-stencil-one/files/saira-stencil-one-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/big-shoulders-stencil/files/big-shoulders-stencil-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/big-shoulders-stencil/files/big-shoulders-stencil-latin-ext-700-normal.woff',
    '../node_modules/@fontsource/big-shoulders-stencil/files/big-shoulders-stencil-latin-ext-900-normal.woff',
    '../node_modules/@fontsource/big-shoulders-stencil-display/files/big-shoulders-stencil-display-latin-ext-700-normal.woff',
    '../node_modules/@fontsource/big-shoulders-stencil-text/files/big-shoulders-stencil-text-latin-ext-700-normal.woff',
    '../node_modules/@fontsource/black-ops-one/files/black-ops-one-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/stick-no-bills/files/stick-no-bills-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/stick-no-bills/files/stick-no-bills-latin-ext-700-normal.woff',
    '../node_modules/@fontsource/keania-one/files/keania-one-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/emblema-one/files/emblema-one-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/plaster/files/plaster-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/playfair-display/files/playfair-display-latin-ext-700-normal.woff',
    '../node_modules/@fontsource/libre-caslon-text/files/libre-caslon-text-latin-ext-700-normal.woff',
    '../node_modules/@fontsource/old-standard-tt/files/old-standard-tt-latin-ext-700-normal.woff',
    '../node_modules/@fontsource/cinzel/files/cinzel-latin-ext-700-normal.woff',
    '../node_modules/@fontsource/marcellus/files/marcellus-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/alfa-slab-one/files/alfa-slab-one-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/zilla-slab/files/zilla-slab-latin-ext-700-normal.woff',
    '../node_modules/@fontsource/bree-serif/files/bree-serif-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/abril-fatface/files/abril-fatface-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/cinzel-decorative/files/cinzel-decorative-latin-ext-700-normal.woff',
    '../node_modules/@fontsource/limelight/files/limelight-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/uncial-antiqua/files/uncial-antiqua-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/berkshire-swash/files/berkshire-swash-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/bebas-neue/files/bebas-neue-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/league-gothic/files/league-gothic-latin-ext-400-normal.woff',
    '../node_modules/@fontsource/oswald/files/oswald-latin-ext-700-normal.woff',
    '../node_modules/@fontsource/great-vibes/files/great-vibes-latin-ext-400-normal.woff',
  ],
  { query: '?url', import: 'default', eager: true },
);
