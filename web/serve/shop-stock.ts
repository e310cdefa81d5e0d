import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

const NAME = 'stock.json';

/** Puts the stock file that ships beside the page, where a shop puts its own in place of it. */
export function shopStock(root: string): Plugin {
  const shipped = (): string => readFileSync(join(root, 'geometry', 'stock', 'starting-stock.json'), 'utf8');
  return {
    name: 'shop-stock',
    generateBundle() {
      this.emitFile({ type: 'asset', fileName: NAME, source: shipped() });
    },
    configureServer(server) {
      server.middlewares.use(`/${NAME}`, (_, answer) => {
        answer.setHeader('Content-Type', 'application/json; charset=utf-8');
        answer.end(shipped());
      });
    },
  };
}
