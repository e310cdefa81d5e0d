import { realpath, stat } from 'node:fs/promises';
import { join, sep } from 'node:path';

/** Longest name that common file systems know, in bytes. */
const LONGEST_PART = 255;
const LONGEST_PATH = 2000;
// A control sign, a backslash or a colon stands in no name of ours, and means something else to some file systems.
const NEVER_IN_A_PART = /[\u0000-\u001f\u007f\\/:]/;

/**
 * The file that a path of an address means: { file: { path, size, mtimeMs }, named } with the path decoded, or { status }
 * when there is none. root is free of links; instead names files of elsewhere by their path. Never throws.
 */
export async function findFile(root, path, instead = {}) {
  if (path.length > LONGEST_PATH) return { status: 414 };
  let parts;
  try {
    parts = path.split('/').slice(1).map(decodeURIComponent);
  } catch {
    return { status: 400 };
  }
  const named = `/${parts.join('/')}`;
  if (Object.hasOwn(instead, named)) return fileAt(named, instead[named]);
  if (parts.at(-1) === '') parts[parts.length - 1] = 'index.html';
  if (parts.length === 0 || !parts.every(isName)) return { status: 404 };
  return fileAt(named, join(root, ...parts), root);
}

/** No empty part, nothing hidden, no way up. */
function isName(part) {
  return part !== '' && !part.startsWith('.') && !NEVER_IN_A_PART.test(part) && Buffer.byteLength(part) <= LONGEST_PART;
}

async function fileAt(named, path, root) {
  try {
    // A link may lead out of the folder, whatever the address says.
    const real = await realpath(path);
    if (root !== undefined && !real.startsWith(root.endsWith(sep) ? root : root + sep)) return { status: 404 };
    const found = await stat(real);
    if (!found.isFile()) return { status: 404 };
    return { named, file: { path: real, size: found.size, mtimeMs: found.mtimeMs } };
  } catch {
    return { status: 404 };
  }
}
