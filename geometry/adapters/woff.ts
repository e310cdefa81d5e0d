import { unzlibSync } from 'fflate';

/** True for files that begin as WOFF 1.0 does. */
export function isWoff(bytes: Uint8Array): boolean {
  return bytes[0] === 0x77 && bytes[1] === 0x4f && bytes[2] === 0x46 && bytes[3] === 0x46;
}

/**
 * A WOFF 1.0 file (W3C recommendation, 2012) as the plain font file inside it; undefined when it cannot be unpacked.
 * Done here and not by the font reader, whose own unpacking never ends on some damaged files.
 * The header must have been judged first (font-file.ts).
 */
export function unpackWoff(bytes: Uint8Array): Uint8Array | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = view.getUint16(12);
  const tables: { at: number; data: Uint8Array }[] = [];
  for (let i = 0; i < count; i++) {
    const at = 44 + 20 * i;
    const [offset, packed, length] = [view.getUint32(at + 4), view.getUint32(at + 8), view.getUint32(at + 12)];
    const data = bytes.subarray(offset, offset + packed);
    const plain = packed < length ? inflate(data, length) : data;
    if (plain?.length !== length) return undefined;
    tables.push({ at, data: plain });
  }
  const head = 12 + 16 * count;
  const out = new Uint8Array(tables.reduce((size, table) => size + padded(table.data.length), head));
  const put = new DataView(out.buffer);
  put.setUint32(0, view.getUint32(4));
  put.setUint16(4, count);
  let end = head;
  tables.forEach((table, i) => {
    const record = 12 + 16 * i;
    put.setUint32(record, view.getUint32(table.at));
    put.setUint32(record + 4, view.getUint32(table.at + 16));
    put.setUint32(record + 8, end);
    put.setUint32(record + 12, table.data.length);
    out.set(table.data, end);
    end += padded(table.data.length);
  });
  return out;
}

function inflate(data: Uint8Array, length: number): Uint8Array | undefined {
  try {
    return unzlibSync(data, { out: new Uint8Array(length) });
  } catch {
    return undefined;
  }
}

/** Tables begin at multiples of four bytes. */
function padded(length: number): number {
  return (length + 3) & ~3;
}
