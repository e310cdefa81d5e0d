import { isWoff, plainFont, woffTables } from '../geometry/adapters/woff.ts';

/**
 * The plain font file inside a WOFF 1.0 file, by what every browser has: the first plate need not wait for a library. Any
 * other file is given back as it is; rejects when one of the catalogue's own is not whole.
 */
export async function unpackInBrowser(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  if (!isWoff(bytes)) return bytes;
  const tables = woffTables(bytes);
  const contents = tables.map(({ data, packed }) => (packed ? inflate(data) : Promise.resolve(data)));
  const plain = plainFont(bytes, tables, await Promise.all(contents));
  if (!plain) throw new Error('a font file that is not whole');
  return plain;
}

async function inflate(data: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const plain = new Blob([data]).stream().pipeThrough(new DecompressionStream('deflate'));
  return new Uint8Array(await new Response(plain).arrayBuffer());
}
