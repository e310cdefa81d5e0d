/** Where a hostile feature is written of. */
export interface PictureCase {
  readonly name: string;
  readonly source: string;
  readonly bytes: Uint8Array;
  /** What the import ends as before any decoder sees it; decode: the header passes, the browser's decoder judges. */
  readonly ends: string;
}

const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const PNG_SPEC = 'W3C PNG 3, 5.2 and 11.2.1 (signature, IHDR)';
const JPEG_SPEC = 'ITU-T T.81, annex B (markers, frame header)';
const WEBP_SPEC = 'RFC 9649 (WebP container)';
const BOMB = 'CWE-409, decompression bomb';
const SNIFF = 'WHATWG MIME Sniffing, 6.1 (image type patterns)';

const bytes = (...parts: (readonly number[] | string)[]): Uint8Array =>
  Uint8Array.from(parts.flatMap((p) => (typeof p === 'string' ? [...p].map((c) => c.charCodeAt(0)) : [...p])));
const u32 = (n: number): number[] => [(n >>> 24) & 255, (n >>> 16) & 255, (n >>> 8) & 255, n & 255];
const u16 = (n: number): number[] => [(n >>> 8) & 255, n & 255];
const png = (w: number, h: number): Uint8Array =>
  bytes(PNG, u32(13), 'IHDR', u32(w), u32(h), [8, 0, 0, 0, 0], u32(0), u32(0), 'IDAT', u32(0));
const jpeg = (w: number, h: number): Uint8Array =>
  bytes([0xff, 0xd8, 0xff, 0xe0], u16(4), [0, 0], [0xff, 0xc0], u16(11), [8], u16(h), u16(w), [1, 1, 0x11, 0]);

export const PICTURE_CASES: readonly PictureCase[] = [
  { name: 'PNG of 60,000 by 60,000', source: BOMB, bytes: png(60_000, 60_000), ends: 'pictureTooLarge' },
  { name: 'PNG of 4 thousand million a side', source: BOMB, bytes: png(0xffffffff, 0xffffffff), ends: 'pictureTooLarge' },
  { name: 'PNG of no width', source: PNG_SPEC, bytes: png(0, 10), ends: 'noPicture' },
  { name: 'PNG that is only a signature', source: PNG_SPEC, bytes: bytes(PNG), ends: 'noPicture' },
  { name: 'PNG without its data', source: PNG_SPEC, bytes: png(20, 20), ends: 'decode' },
  { name: 'JPEG of 65,000 by 65,000', source: BOMB, bytes: jpeg(65_000, 65_000), ends: 'pictureTooLarge' },
  { name: 'JPEG without a frame', source: JPEG_SPEC, bytes: bytes([0xff, 0xd8, 0xff, 0xd9]), ends: 'noPicture' },
  { name: 'JPEG whose marker says it is longer than the file', source: JPEG_SPEC, bytes: bytes([0xff, 0xd8, 0xff, 0xe1, 0xff, 0xff, 1, 2, 3, 4, 5, 6, 7, 8]), ends: 'noPicture' },
  { name: 'JPEG of markers of no length', source: JPEG_SPEC, bytes: bytes([0xff, 0xd8], Array.from({ length: 400 }, () => [0xff, 0xe0, 0, 0]).flat()), ends: 'noPicture' },
  { name: 'JPEG with a script in its comment', source: SNIFF, bytes: bytes([0xff, 0xd8, 0xff, 0xfe], u16(27), '<script>alert(1)</script>', [0xff, 0xd9]), ends: 'noPicture' },
  { name: 'WebP of 16 thousand a side', source: BOMB, bytes: bytes('RIFF', u32(22), 'WEBPVP8X', [10, 0, 0, 0], [0, 0, 0, 0], [0x7f, 0x3e, 0, 0x7f, 0x3e, 0]), ends: 'pictureTooLarge' },
  { name: 'WebP cut off in its header', source: WEBP_SPEC, bytes: bytes('RIFF', u32(22), 'WEBPVP8X'), ends: 'noPicture' },
  { name: 'GIF', source: SNIFF, bytes: bytes('GIF89a', [1, 0, 1, 0, 0, 0, 0, 0x3b]), ends: 'unknownKind' },
  { name: 'a page called picture.png', source: SNIFF, bytes: bytes('<html><script>alert(1)</script></html>'), ends: 'unknownKind' },
  { name: 'a program called picture.png', source: SNIFF, bytes: bytes('MZ', [0x90, 0, 3, 0]), ends: 'unknownKind' },
  { name: 'nothing at all', source: SNIFF, bytes: new Uint8Array(0), ends: 'empty' },
]; // prettier-ignore
