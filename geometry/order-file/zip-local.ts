/** A file of a ZIP as its list describes it. */
export interface ZipEntry {
  readonly name: string;
  readonly rawName: Uint8Array;
  readonly madeBy: number;
  readonly needed: number;
  readonly flags: number;
  readonly method: number;
  /** Time and date, as the archive has them. */
  readonly moment: number;
  readonly crc: number;
  /** Bytes in the archive, and when unpacked. */
  readonly packed: number;
  readonly size: number;
  /** Where its own header begins, and its packed bytes. */
  readonly at: number;
  readonly dataAt: number;
  /** Nothing stands in the fields that an order leaves empty. */
  readonly plain: boolean;
}

const LOCAL_SIGN = 0x04034b50;
const LOCAL_BYTES = 30;
const DESCRIPTOR_SIGN = 0x08074b50;
const DESCRIPTOR_BYTES = 16;
/** Bit 3: length and check sum stand behind the packed bytes. */
const BEHIND = 8;

/**
 * Where a file's packed bytes begin and its record ends (sections 4.3.7 and 4.3.9 of the APPNOTE); undefined where its
 * own header says anything else than the list, or it would reach beyond `to`. plain: without an extra field, which may
 * stand here alone and say another name to other programs (section 4.6.9).
 */
export function checkLocal(
  bytes: Uint8Array,
  view: DataView,
  entry: ZipEntry,
  to: number,
): { readonly dataAt: number; readonly endAt: number; readonly plain: boolean } | undefined {
  const { at, rawName, flags, crc, packed, size } = entry;
  if (at + LOCAL_BYTES + rawName.length > to || view.getUint32(at, true) !== LOCAL_SIGN) return undefined;
  const u16 = (offset: number): number => view.getUint16(at + offset, true);
  const same =
    u16(4) === entry.needed &&
    u16(6) === flags &&
    u16(8) === entry.method &&
    view.getUint32(at + 10, true) === entry.moment &&
    u16(26) === rawName.length &&
    rawName.every((byte, i) => bytes[at + LOCAL_BYTES + i] === byte);
  if (!same) return undefined;
  const isBehind = (flags & BEHIND) !== 0;
  if (!saysSizes(view, at + 14, isBehind ? [0, 0, 0] : [crc, packed, size])) return undefined;
  const extraBytes = u16(28);
  const dataAt = at + LOCAL_BYTES + rawName.length + extraBytes;
  const dataEnd = dataAt + packed;
  const endAt = dataEnd + (isBehind ? DESCRIPTOR_BYTES : 0);
  if (endAt > to) return undefined;
  if (isBehind) {
    if (view.getUint32(dataEnd, true) !== DESCRIPTOR_SIGN) return undefined;
    if (!saysSizes(view, dataEnd + 4, [crc, packed, size])) return undefined;
  }
  return { dataAt, endAt, plain: extraBytes === 0 };
}

/** Check sum, length packed and length, one after another. */
function saysSizes(view: DataView, at: number, wanted: readonly [number, number, number]): boolean {
  return wanted.every((value, i) => view.getUint32(at + 4 * i, true) === value);
}

/** The only way in which zip-stream.ts enters a file: made by and needs 2.0, no flags, 1 January 2000. */
export function isAsWritten({ madeBy, needed, flags, moment, plain }: ZipEntry): boolean {
  return madeBy === 20 && needed === 20 && flags === 0 && moment === 0x28210000 && plain;
}
