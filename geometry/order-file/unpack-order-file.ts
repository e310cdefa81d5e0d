import { crc32 } from '../adapters/crc32.ts';
import { inflateCapped } from '../adapters/inflate-capped.ts';
import { fault, faultOf } from './fault.ts';
import { type NameTrouble, nameTrouble, sameOnDisk } from './file-name.ts';
import { MOST_FILE_BYTES, MOST_RATIO, MOST_UNPACKED_BYTES, type OrderFault, RATIO_FROM_BYTES } from './order-file.ts';
import { listZip } from './zip-list.ts';
import { isAsWritten, type ZipEntry } from './zip-local.ts';

/** An archive unpacked as far as it may be. */
export interface Unpacked {
  /** Sound files by name. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly faults: readonly OrderFault[];
}

const TROUBLES = {
  path: 'orderFault.path',
  signs: 'orderFault.signs',
  system: 'orderFault.system',
} as const satisfies Record<NameTrouble, string>;

/**
 * Unpacks in memory, never more than an order can hold (CWE-409), and never a file whose name is not plain (CWE-22),
 * that is in the archive twice or is locked. Each fault is of one file where it can be.
 */
export function unpackOrderFile(bytes: Uint8Array): Unpacked {
  const { entries, faults: ofList } = listZip(bytes);
  const faults = [...ofList];
  const files = new Map<string, Uint8Array>();
  const taken = new Map<string, string>();
  const repacked: ZipEntry[] = [];
  let total = 0;
  for (const entry of entries) {
    const { name } = entry;
    const trouble = troubleOf(entry, taken);
    taken.set(sameOnDisk(name), name);
    if (trouble) {
      faults.push(trouble);
      continue;
    }
    total += entry.size;
    if (isBomb(entry) || total > MOST_UNPACKED_BYTES) {
      faults.push(faultOf(name, 'orderFault.bomb'));
      continue;
    }
    if (!isAsWritten(entry)) repacked.push(entry);
    const unpacked = unpack(bytes.subarray(entry.dataAt, entry.dataAt + entry.packed), entry);
    if (unpacked instanceof Uint8Array) files.set(name, unpacked);
    else faults.push(unpacked);
  }
  const [only, ...more] = repacked;
  if (more.length > 0) faults.push(fault('orderFault.repacked'));
  else if (only) faults.push(faultOf(only.name, 'orderFault.repackedFile'));
  return { files, faults };
}

/** Why a file is not to be unpacked, whatever is in it. */
function troubleOf({ name, flags, method }: ZipEntry, taken: ReadonlyMap<string, string>): OrderFault | undefined {
  const named = nameTrouble(name);
  if (named) return faultOf(name, TROUBLES[named]);
  const other = taken.get(sameOnDisk(name));
  if (other !== undefined)
    return faultOf(name, other === name ? 'orderFault.twice' : 'orderFault.caseTwice', { other });
  // Bits 0, 6 and 13 all say that something is encrypted (section 4.4.4).
  if ((flags & 0x2041) !== 0) return faultOf(name, 'orderFault.encrypted');
  // 0 stored, 8 deflated (section 4.4.5).
  return method === 0 || method === 8 ? undefined : faultOf(name, 'orderFault.method');
}

function isBomb({ size, packed }: ZipEntry): boolean {
  return size > MOST_FILE_BYTES || (size >= RATIO_FROM_BYTES && size > packed * MOST_RATIO);
}

function unpack(packed: Uint8Array, { name, method, size, crc }: ZipEntry): Uint8Array | OrderFault {
  if (method === 0) return checkBytes(packed, name, size, crc);
  const inflated = inflateCapped(packed, size);
  if ('problem' in inflated) {
    return faultOf(name, inflated.problem === 'too-much' ? 'orderFault.bomb' : 'orderFault.damaged');
  }
  // Without its last byte a packed file is cut short; if it is not, that byte was not part of it.
  if (packed.length > 0 && !('problem' in inflateCapped(packed.subarray(0, -1), size))) {
    return faultOf(name, 'orderFault.strayIn');
  }
  return checkBytes(inflated.bytes, name, size, crc);
}

function checkBytes(bytes: Uint8Array, name: string, size: number, crc: number): Uint8Array | OrderFault {
  if (bytes.length !== size || crc32(bytes) !== crc) return faultOf(name, 'orderFault.damaged');
  return isArchive(bytes) ? faultOf(name, 'orderFault.archive') : bytes;
}

/** First bytes of ZIP, GZIP, RAR, 7z, BZIP2 and XZ: a bomb in the bomb. */
const ARCHIVES = ['504b0304', '504b0506', '1f8b08', '52617221', '377abcaf', '425a68', 'fd377a58'];

export function isArchive(bytes: Uint8Array): boolean {
  const begin = [...bytes.subarray(0, 4)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return ARCHIVES.some((sign) => begin.startsWith(sign));
}
