import { Zip, ZipDeflate, ZipPassThrough, zipSync, type Zippable } from 'fflate';

/** A ZIP that is written as it grows: memory holds one file at a time, not the archive. */
export interface ZipStream {
  /** Names are unique and use `/`; files stand in the order in which they are added. */
  readonly add: (name: string, bytes: Uint8Array) => void;
  /** Writes the list of files. Nothing is added after it. */
  readonly end: () => void;
}

/** A ZIP carries a time; a fixed one makes the same files give the same bytes. */
const FIXED_TIME = new Date(2000, 0, 1);

/** What is packed already, so that packing again only costs time. */
const PACKED = /\.(pdf|zip|png|jpg)$/i;

/** onBytes gets the archive piece by piece; each piece is its own to keep. */
export function createZip(onBytes: (piece: Uint8Array) => void): ZipStream {
  let failed: Error | undefined;
  const zip = new Zip((error, piece) => {
    if (error) failed = error;
    else onBytes(piece);
  });
  const holdOn = () => {
    if (failed) throw failed;
  };
  return {
    add(name, bytes) {
      const file = PACKED.test(name) ? new ZipPassThrough(name) : new ZipDeflate(name, { level: 6 });
      file.mtime = FIXED_TIME;
      zip.add(file);
      file.push(bytes, true);
      holdOn();
    },
    end() {
      zip.end();
      holdOn();
    },
  };
}

/**
 * A whole archive at once, for a handful of files in the order given; names are no whole numbers. What the archive is
 * laid out by besides: deflate or stored, lengths before the bytes, no extra fields (geometry/order-file/ reads no other).
 */
export function zipOf(files: readonly { readonly name: string; readonly bytes: Uint8Array }[]): Uint8Array {
  const content: Zippable = {};
  for (const { name, bytes } of files) content[name] = [bytes, { level: PACKED.test(name) ? 0 : 6 }];
  return zipSync(content, { mtime: FIXED_TIME });
}
