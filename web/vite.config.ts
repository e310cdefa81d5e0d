import react from '@vitejs/plugin-react';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { appManifest } from './serve/app-manifest.ts';
import { visitChunks, workerChunks } from './serve/chunks.ts';
import { demoPictures } from './serve/demo-pictures.ts';
import { leanClipper } from './serve/lean-clipper.ts';
import { licenceNotice } from './serve/licence-notice.ts';
import { offlineBuild } from './serve/offline-build.ts';
import { pagePolicy } from './serve/page-policy.ts';
import { precompress } from './serve/precompress.ts';
import { shopStock } from './serve/shop-stock.ts';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Words of one group and language come in one file; what English says first is part of the page. */
function wordGroup(id: string): string | null {
  const [, language, group] = /\/web\/words\/(\w+)\/(\w+)\/\w+\.json/.exec(id) ?? [];
  return group === undefined || (language === 'en' && group === 'first') ? null : `words-${language}-${group}`;
}
const words = { name: wordGroup, debugName: 'words', priority: 2 };

const licences = licenceNotice(at('.'));

export default defineConfig({
  root: at('.'),
  publicDir: at('serve/public'),
  // Relative addresses: the built folder works under any path of a shop's own server.
  base: './',
  plugins: [
    leanClipper(),
    demoPictures(),
    react(),
    licences.page,
    appManifest(at('.')),
    pagePolicy(),
    shopStock(at('..')),
    offlineBuild(at('.')),
    precompress(),
  ],
  build: {
    outDir: at('../dist'),
    emptyOutDir: true,
    target: 'es2023',
    // As data: addresses small fonts would be asked for in a way that the page's policy forbids.
    assetsInlineLimit: 0,
    // Every browser that reads this target knows it.
    modulePreload: { polyfill: false },
    // The PDF writer is large and loaded only when a spec sheet is asked for.
    chunkSizeWarningLimit: 1200,
    rolldownOptions: { output: { codeSplitting: { groups: [words, ...visitChunks(at('.'))] } } },
  },
  worker: {
    format: 'es',
    plugins: () => [leanClipper(), licences.worker],
    rolldownOptions: { output: { codeSplitting: { groups: [words, ...workerChunks(at('.'))] } } },
  },
  server: {
    host: '127.0.0.1',
    // geometry/, fonts/ and the packages' fonts lie beside web/, not in it.
    fs: { allow: [at('..')] },
  },
  preview: { host: '127.0.0.1' },
});
