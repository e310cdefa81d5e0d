import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { stockMark } from '../../geometry/stock/stock-mark.ts';
import type { StockFile } from '../../geometry/stock/stock-schema.ts';

/** By the name beside the page. */
const SHIPPED = {
  'stock.json': ['stock', 'starting-stock.json'],
  'shop.json': ['shop', 'starting-shop.json'],
} as const;
const NAMES = Object.keys(SHIPPED) as (keyof typeof SHIPPED)[];

/**
 * Puts the stock file and the shop's file that ship beside the page, where a shop puts its own in place of them, and
 * tells the page the mark of the stock that ships.
 */
export function shopStock(root: string): Plugin {
  const shipped = (name: keyof typeof SHIPPED): string =>
    readFileSync(join(root, 'geometry', ...SHIPPED[name]), 'utf8');
  return {
    name: 'shop-stock',
    config: () => ({
      define: {
        'import.meta.env.SHIPPED_STOCK': JSON.stringify(stockMark(JSON.parse(shipped('stock.json')) as StockFile)),
      },
    }),
    // Asked for at once, or the page would wait for its script and then once more for these.
    transformIndexHtml: {
      order: 'post',
      handler: () =>
        NAMES.map((name) => ({
          tag: 'link',
          attrs: { rel: 'preload', as: 'fetch', crossorigin: true, href: `./${name}` },
          injectTo: 'head' as const,
        })),
    },
    generateBundle() {
      for (const name of NAMES) this.emitFile({ type: 'asset', fileName: name, source: shipped(name) });
    },
    configureServer(server) {
      for (const name of NAMES) {
        server.middlewares.use(`/${name}`, (_, answer) => {
          answer.setHeader('Content-Type', 'application/json; charset=utf-8');
          answer.end(shipped(name));
        });
      }
    },
  };
}
