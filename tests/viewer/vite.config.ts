import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** `npm run viewer`: served while one works, never built; the page itself knows nothing of it. */
export default defineConfig({
  root: at('.'),
  cacheDir: at('../../node_modules/.vite/viewer'),
  server: { host: '127.0.0.1', port: 5180, fs: { allow: [at('../..')] } },
});
