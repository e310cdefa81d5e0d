import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import type { Plugin } from 'vite';
import { isCompressedCopy, SHOPS_OWN } from './built-files.ts';

const TEXT = /\.(?:js|mjs|css|html|svg|json|txt|webmanifest|wasm)$/;
/** One packet carries so much; below it nothing is won. */
const LEAST_BYTES = 1400;
/** A copy that saves less is not worth a file. */
const MOST_SHARE = 0.95;
/** Of 11: the last two steps take three times as long for 1 or 2 %. */
const BROTLI_QUALITY = 9;

/**
 * Lays a .br and a .gz beside each text of the built page, for servers that take what is compressed already. Not beside
 * files that a shop edits in place: those copies would tell of the file before.
 */
export function precompress(): Plugin {
  let outDir = '';
  return {
    name: 'precompress',
    apply: 'build',
    configResolved: (config) => {
      outDir = config.build.outDir.startsWith('/') ? config.build.outDir : join(config.root, config.build.outDir);
    },
    closeBundle: {
      order: 'post',
      sequential: true,
      async handler() {
        const files = readdirSync(outDir, { recursive: true, encoding: 'utf8' });
        await Promise.all(files.filter(isWorthCopies).map((file) => layCopies(join(outDir, file))));
      },
    },
  };
}

function isWorthCopies(file: string): boolean {
  return TEXT.test(file) && !isCompressedCopy(file) && !SHOPS_OWN.includes(file);
}

async function layCopies(path: string): Promise<void> {
  const bytes = readFileSync(path);
  if (bytes.length < LEAST_BYTES) return;
  const params = { [constants.BROTLI_PARAM_QUALITY]: BROTLI_QUALITY, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length };
  const copies = {
    '.br': await promisify(brotliCompress)(bytes, { params }),
    '.gz': await promisify(gzip)(bytes, { level: 9 }),
  };
  for (const [end, copy] of Object.entries(copies)) {
    if (copy.length <= bytes.length * MOST_SHARE) writeFileSync(path + end, copy);
  }
}
