/** True for files that begin as WOFF 1.0 does. */
export function isWoff(bytes: Uint8Array): boolean {
  return bytes[0] === 0x77 && bytes[1] === 0x4f && bytes[2] === 0x46 && bytes[3] === 0x46;
}

/** One table as it lies in a WOFF 1.0 file. */
export interface WoffTable {
  /** Where the file says what it is, bytes. */
  readonly at: number;
  readonly data: Uint8Array<ArrayBuffer>;
  /** Packed by zlib. */
  readonly packed: boolean;
  /** Of what is in it, bytes. */
  readonly length: number;
}

/** The tables of a WOFF 1.0 file (W3C recommendation, 2012), whose header must have been judged first (font-file.ts). */
export function woffTables(bytes: Uint8Array<ArrayBuffer>): WoffTable[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return Array.from({ length: view.getUint16(12) }, (_, i) => {
    const at = 44 + 20 * i;
    const [offset, size, length] = [view.getUint32(at + 4), view.getUint32(at + 8), view.getUint32(at + 12)];
    return { at, data: bytes.subarray(offset, offset + size), packed: size < length, length };
  });
}

/** The plain font file with what is in those tables, each given in full; undefined when one has not its length. */
export function plainFont(
  bytes: Uint8Array<ArrayBuffer>,
  tables: readonly WoffTable[],
  contents: readonly (Uint8Array | undefined)[],
): Uint8Array<ArrayBuffer> | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const whole = tables.flatMap((table, i) => {
    const data = contents[i];
    return data?.length === table.length ? [{ at: table.at, data }] : [];
  });
  if (whole.length < tables.length) return undefined;
  const head = 12 + 16 * whole.length;
  const out = new Uint8Array(whole.reduce((size, { data }) => size + padded(data.length), head));
  const put = new DataView(out.buffer);
  put.setUint32(0, view.getUint32(4));
  put.setUint16(4, whole.length);
  let end = head;
  whole.forEach(({ at, data }, i) => {
    const record = 12 + 16 * i;
    put.setUint32(record, view.getUint32(at));
    put.setUint32(record + 4, view.getUint32(at + 16));
    put.setUint32(record + 8, end);
    put.setUint32(record + 12, data.length);
    out.set(data, end);
    end += padded(data.length);
  });
  return out;
}

/** Tables begin at multiples of four bytes. */
function padded(length: number): number {
  return (length + 3) & ~3;
}
