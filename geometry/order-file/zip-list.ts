import { fault, faultOf } from './fault.ts';
import { MOST_FILES, MOST_ORDER_BYTES, type OrderFault } from './order-file.ts';
import { checkLocal, type ZipEntry } from './zip-local.ts';

/**
 * Reads a ZIP's list of files as strictly as an order is written (fields: PKWARE APPNOTE 6.3.10, sections 4.3.7 to
 * 4.3.16): the files fill the archive from its first byte to its list without a gap, the list goes to the closing record,
 * and that is its last byte; what stands before a file says the same as the list. So two programs cannot see two
 * different archives in it.
 */
export interface ZipList {
  readonly entries: readonly ZipEntry[];
  readonly faults: readonly OrderFault[];
}

const LOCAL_SIGN = 0x04034b50;
const CENTRAL_SIGN = 0x02014b50;
const END_SIGN = 0x06054b50;
const WIDE_END_SIGN = 0x07064b50;
const END_BYTES = 22;
const CENTRAL_BYTES = 46;
const LONGEST_COMMENT = 0xffff;

export function listZip(bytes: Uint8Array): ZipList {
  const refused = (key: Parameters<typeof fault>[0]): ZipList => ({
    entries: [],
    faults: [fault(key, { most: key === 'orderFault.tooMany' ? MOST_FILES : MOST_ORDER_BYTES / 1e6 })],
  });
  if (bytes.length > MOST_ORDER_BYTES) return refused('orderFault.large');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOf(view);
  if (end === undefined) {
    const begun = bytes.length >= 4 && view.getUint32(0, true) === LOCAL_SIGN;
    return begun ? refused('orderFault.truncated') : refused('orderFault.notZip');
  }
  // Section 4.3.16; a comment would be bytes that belong to no file.
  if (end + END_BYTES !== bytes.length || view.getUint16(end + 20, true) !== 0) return refused('orderFault.stray');
  const count = view.getUint16(end + 10, true);
  const [listBytes, listAt] = [view.getUint32(end + 12, true), view.getUint32(end + 16, true)];
  const wideSign = end >= 20 && view.getUint32(end - 20, true) === WIDE_END_SIGN;
  if (wideSign || count === 0xffff || listAt === 0xffffffff) return refused('orderFault.wide');
  // One disk: all fields that speak of others are 0.
  if (view.getUint32(end + 4, true) !== 0 || view.getUint16(end + 8, true) !== count) {
    return refused('orderFault.listBroken');
  }
  if (count > MOST_FILES) return refused('orderFault.tooMany');
  if (listAt + listBytes !== end) return refused('orderFault.stray');
  const listed = readList(bytes, view, listAt, end, count);
  if (!listed) return refused('orderFault.listBroken');
  return checkPlaces(bytes, view, listed, listAt);
}

/** Where the closing record begins; undefined when there is none. */
function endOf(view: DataView): number | undefined {
  const last = view.byteLength - END_BYTES;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at--) {
    if (view.getUint32(at, true) === END_SIGN) return at;
  }
  return undefined;
}

/** The list's entries, or undefined where it does not end exactly at the closing record. */
function readList(
  bytes: Uint8Array,
  view: DataView,
  from: number,
  to: number,
  count: number,
): readonly ZipEntry[] | undefined {
  const entries: ZipEntry[] = [];
  let at = from;
  for (let i = 0; i < count; i++) {
    if (at + CENTRAL_BYTES > to || view.getUint32(at, true) !== CENTRAL_SIGN) return undefined;
    const u16 = (offset: number): number => view.getUint16(at + offset, true);
    const u32 = (offset: number): number => view.getUint32(at + offset, true);
    const [nameBytes, extraBytes, commentBytes] = [u16(28), u16(30), u16(32)];
    const next = at + CENTRAL_BYTES + nameBytes + extraBytes + commentBytes;
    if (next > to) return undefined;
    const rawName = bytes.subarray(at + CENTRAL_BYTES, at + CENTRAL_BYTES + nameBytes);
    entries.push({
      name: new TextDecoder().decode(rawName),
      rawName,
      madeBy: u16(4),
      needed: u16(6),
      flags: u16(8),
      method: u16(10),
      moment: u32(12),
      crc: u32(16),
      packed: u32(20),
      size: u32(24),
      at: u32(42),
      dataAt: 0,
      /** Extra field, comment, disk and attributes: all nothing in an order. */
      plain: extraBytes === 0 && commentBytes === 0 && u16(34) === 0 && u16(36) === 0 && u32(38) === 0,
    });
    at = next;
  }
  return at === to ? entries : undefined;
}

/** Goes from file to file as they lie, each beginning where the one before ends. */
function checkPlaces(bytes: Uint8Array, view: DataView, listed: readonly ZipEntry[], listAt: number): ZipList {
  const lying = [...listed].sort((a, b) => a.at - b.at);
  const places = new Map<ZipEntry, ZipEntry>();
  const faults: OrderFault[] = [];
  let at = 0;
  for (const [i, entry] of lying.entries()) {
    const wide = [entry.packed, entry.size, entry.at].includes(0xffffffff);
    if (wide) return { entries: [], faults: [fault('orderFault.wide')] };
    if (entry.at !== at) return { entries: [], faults: [...faults, fault('orderFault.stray')] };
    const next = lying[i + 1]?.at ?? listAt;
    const local = checkLocal(bytes, view, entry, next);
    if (local === undefined) faults.push(faultOf(entry.name, 'orderFault.disagree'));
    else places.set(entry, { ...entry, dataAt: local.dataAt, plain: entry.plain && local.plain });
    at = local?.endAt ?? next;
  }
  if (at !== listAt) faults.push(fault('orderFault.stray'));
  // In the order of the list, which is the order of writing.
  return { entries: listed.flatMap((e) => places.get(e) ?? []), faults };
}
