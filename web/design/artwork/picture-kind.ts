/** What a file is by its first bytes, whatever it is called. */
export type FileKind = 'svg' | 'picture' | 'unknown';

/** Side lengths of a picture as its header states them, in pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** PNG (W3C PNG 3, 5.2), JPEG (ITU-T T.81, B.1) and WebP (RFC 9649) by their signatures; SVG by its first tag. */
export function fileKind(bytes: Uint8Array): FileKind {
  if (isPng(bytes) || isJpeg(bytes) || isWebp(bytes)) return 'picture';
  const head = new TextDecoder('utf-8').decode(bytes.subarray(0, 4096)).replaceAll('\u0000', '');
  return /<(\?xml|!doctype\s+svg|!--|svg|[\w-]+:svg|!entity)/i.test(head) || (bytes[0] === 0x1f && bytes[1] === 0x8b)
    ? 'svg'
    : 'unknown';
}

/** Size by the header, before anything is unpacked; undefined where the header makes no sense. */
export function pictureSize(bytes: Uint8Array): Size | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    if (isPng(bytes)) return sane(view.getUint32(16), view.getUint32(20));
    if (isWebp(bytes)) return webpSize(bytes, view);
    return isJpeg(bytes) ? jpegSize(view) : undefined;
  } catch {
    // A header that ends before it says how large it is.
    return undefined;
  }
}

function isPng(b: Uint8Array): boolean {
  return [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a].every((v, i) => b[i] === v);
}

function isJpeg(b: Uint8Array): boolean {
  return b[0] === 0xff && b[1] === 0xd8 && b[2] === 0xff;
}

function isWebp(b: Uint8Array): boolean {
  return text(b, 0, 4) === 'RIFF' && text(b, 8, 12) === 'WEBP';
}

function text(b: Uint8Array, from: number, to: number): string {
  return String.fromCharCode(...b.subarray(from, to));
}

/** The frame header (SOF) of a JPEG: markers are walked from one to the next. */
function jpegSize(view: DataView): Size | undefined {
  let at = 2;
  while (at + 9 < view.byteLength) {
    if (view.getUint8(at) !== 0xff) return undefined;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) at += 1;
    else if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker))
      return sane(view.getUint16(at + 7), view.getUint16(at + 5));
    else at += 2 + view.getUint16(at + 2);
  }
  return undefined;
}

function webpSize(bytes: Uint8Array, view: DataView): Size | undefined {
  const chunk = text(bytes, 12, 16);
  if (chunk === 'VP8X')
    return sane(1 + (view.getUint32(24, true) & 0xffffff), 1 + ((view.getUint32(26, true) >> 8) & 0xffffff));
  if (chunk === 'VP8 ') return sane(view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff);
  if (chunk !== 'VP8L') return undefined;
  const bits = view.getUint32(21, true);
  return sane(1 + (bits & 0x3fff), 1 + ((bits >> 14) & 0x3fff));
}

function sane(width: number, height: number): Size | undefined {
  return width > 0 && height > 0 ? { width, height } : undefined;
}
