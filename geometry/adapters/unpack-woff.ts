import { unzlibSync } from 'fflate';
import { plainFont, woffTables } from './woff.ts';

/**
 * A WOFF 1.0 file as the plain font file inside it; undefined when it cannot be unpacked. Done here and not by the font
 * reader, whose own unpacking never ends on some damaged files.
 */
export function unpackWoff(file: Uint8Array): Uint8Array<ArrayBuffer> | undefined {
  const bytes = new Uint8Array(file.buffer as ArrayBuffer, file.byteOffset, file.byteLength);
  const tables = woffTables(bytes);
  const contents = tables.map(({ data, packed, length }) => (packed ? inflate(data, length) : data));
  return plainFont(bytes, tables, contents);
}

function inflate(data: Uint8Array, length: number): Uint8Array | undefined {
  try {
    return unzlibSync(data, { out: new Uint8Array(length) });
  } catch {
    return undefined;
  }
}
