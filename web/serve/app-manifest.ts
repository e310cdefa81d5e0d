import { Resvg } from '@resvg/resvg-js';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

/** Sides of the icons in px: what the installed page is shown by (W3C Web Application Manifest), 180 by Apple's home screen. */
const ANY = [192, 512];
const HOME_SCREEN = 180;
/** A maskable icon may lose all outside of a circle of 80 % (the standard's safe zone); ours stays inside 70 %. */
const MASKABLE = 512;
const SAFE_SHARE = 0.7;

const PAPER = '#f3eee3';

/** Makes the page installable: a manifest, and icons drawn from favicon.svg. */
export function appManifest(root: string): Plugin {
  const sign = readFileSync(join(root, 'serve', 'public', 'favicon.svg'), 'utf8');
  return {
    name: 'app-manifest',
    apply: 'build',
    generateBundle() {
      for (const side of ANY) this.emitFile({ type: 'asset', fileName: `icon-${side}.png`, source: png(sign, side) });
      this.emitFile({ type: 'asset', fileName: 'icon-maskable.png', source: png(onPaper(sign), MASKABLE) });
      this.emitFile({ type: 'asset', fileName: 'icon-home.png', source: png(onPaper(sign), HOME_SCREEN) });
      this.emitFile({ type: 'asset', fileName: 'manifest.webmanifest', source: JSON.stringify(MANIFEST) });
    },
    transformIndexHtml: {
      order: 'post',
      handler: () => [
        { tag: 'link', attrs: { rel: 'manifest', href: './manifest.webmanifest' }, injectTo: 'head' },
        { tag: 'link', attrs: { rel: 'apple-touch-icon', href: './icon-home.png' }, injectTo: 'head' },
      ],
    },
  };
}

const MANIFEST = {
  name: 'Bridgehead',
  short_name: 'Bridgehead',
  description: 'Stencils for barrel heads: designed, proved and made.',
  id: './',
  start_url: './',
  scope: './',
  display: 'standalone',
  background_color: PAPER,
  theme_color: PAPER,
  icons: [
    ...ANY.map((side) => ({ src: `./icon-${side}.png`, sizes: `${side}x${side}`, type: 'image/png', purpose: 'any' })),
    { src: './icon-maskable.png', sizes: `${MASKABLE}x${MASKABLE}`, type: 'image/png', purpose: 'maskable' },
  ],
};

function png(svg: string, side: number): Uint8Array {
  return new Resvg(svg, { fitTo: { mode: 'width', value: side } }).render().asPng();
}

/** The sign in the middle of a full square. */
function onPaper(svg: string): string {
  const inner = svg.replace(/^[\s\S]*?<svg[^>]*>|<\/svg>\s*$/g, '');
  const [, box = '0 0 32 32'] = /viewBox="([^"]+)"/.exec(svg) ?? [];
  const [x = 0, y = 0, width = 32, height = 32] = box.split(' ').map(Number);
  const [midX, midY] = [x + width / 2, y + height / 2];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}"><rect x="${x}" y="${y}" width="${width}" height="${height}" fill="${PAPER}"/><g transform="translate(${midX} ${midY}) scale(${SAFE_SHARE}) translate(${-midX} ${-midY})">${inner}</g></svg>`;
}
