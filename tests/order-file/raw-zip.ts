import { crc32, deflateRawSync } from 'node:zlib';

/** A file as it is to stand in the archive; what is given overrules what would be true. */
export interface RawFile {
  readonly name: string | Uint8Array;
  readonly bytes: Uint8Array;
  readonly packed?: Uint8Array;
  readonly method?: number;
  readonly crc?: number;
  readonly size?: number;
  readonly flags?: number;
  readonly madeBy?: number;
  readonly extra?: Uint8Array;
  /** What its own header says otherwise than the list. */
  readonly local?: {
    readonly name?: string;
    readonly method?: number;
    readonly flags?: number;
    readonly extra?: Uint8Array;
  };
  readonly attributes?: number;
}

/** Field by field after the PKWARE APPNOTE 6.3.10, sections 4.3.7 to 4.3.16; nothing of the writer's takes part. */
export function rawZip(files: readonly RawFile[], comment = ''): Buffer {
  const [body, list]: [Buffer[], Buffer[]] = [[], []];
  let at = 0;
  for (const file of files) {
    const stored = /\.pdf$/.test(String(file.name));
    const method = file.method ?? (stored ? 0 : 8);
    const packed = Buffer.from(file.packed ?? (method === 8 ? deflateRawSync(file.bytes) : file.bytes));
    const [flags, extra] = [file.flags ?? 0, Buffer.from(file.extra ?? [])];
    const sums = numbers([file.crc ?? crc32(file.bytes), 4], [packed.length, 4], [file.size ?? file.bytes.length, 4]);
    const name = Buffer.from(file.name as string);
    const ownName = Buffer.from(file.local?.name ?? name);
    const ownExtra = Buffer.from(file.local?.extra ?? extra);
    const isBehind = (flags & 8) !== 0;
    const local = Buffer.concat([
      numbers([0x04034b50, 4], [20, 2], [file.local?.flags ?? flags, 2], [file.local?.method ?? method, 2]),
      numbers([0x28210000, 4]),
      isBehind ? Buffer.alloc(12) : sums,
      numbers([ownName.length, 2], [ownExtra.length, 2]),
      ownName,
      ownExtra,
      packed,
      isBehind ? Buffer.concat([numbers([0x08074b50, 4]), sums]) : Buffer.alloc(0),
    ]);
    body.push(local);
    list.push(
      Buffer.concat([
        numbers([0x02014b50, 4], [file.madeBy ?? 20, 2], [20, 2], [flags, 2], [method, 2], [0x28210000, 4]),
        sums,
        numbers([name.length, 2], [extra.length, 2], [0, 2], [0, 2], [0, 2], [file.attributes ?? 0, 4], [at, 4]),
        name,
        extra,
      ]),
    );
    at += local.length;
  }
  const listed = Buffer.concat(list);
  const end = numbers(
    [0x06054b50, 4],
    [0, 4],
    [files.length, 2],
    [files.length, 2],
    [listed.length, 4],
    [at, 4],
    [comment.length, 2],
  );
  return Buffer.concat([...body, listed, end, Buffer.from(comment)]);
}

/** Little-endian, each so many bytes long. */
function numbers(...parts: readonly (readonly [number, number])[]): Buffer {
  return Buffer.concat(
    parts.map(([value, bytes]) => {
      const part = Buffer.alloc(bytes);
      part.writeUIntLE(value, 0, bytes);
      return part;
    }),
  );
}
