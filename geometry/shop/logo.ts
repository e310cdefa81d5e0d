/** What a logo in a shop file holds, looked at before anybody draws it. */

export interface LogoPathPart {
  readonly command: 'M' | 'L' | 'Q' | 'C' | 'Z';
  /** x and y in turn, in the logo's box. */
  readonly numbers: readonly number[];
}

const NUMBERS = { M: 2, L: 2, Q: 4, C: 6, Z: 0 } as const;

/** The parts of a path of absolute M, L, Q, C and Z, each command written out; undefined where it is not sound. */
export function readLogoPath(d: string): LogoPathPart[] | undefined {
  const tokens = d.match(/[MLQCZ]|[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?|[^\s,]/g) ?? [];
  const parts: LogoPathPart[] = [];
  let i = 0;
  while (i < tokens.length) {
    const command = tokens[i++] as keyof typeof NUMBERS;
    if (!Object.hasOwn(NUMBERS, command) || (parts.length === 0 && command !== 'M')) return undefined;
    const start = parts.length;
    const wanted = NUMBERS[command];
    do {
      const numbers = tokens.slice(i, i + wanted).map(Number);
      if (numbers.length < wanted || numbers.some((n) => !Number.isFinite(n))) return undefined;
      i += wanted;
      // SVG: further pairs after a move are lines.
      parts.push({ command: command === 'M' && parts.length > start ? 'L' : command, numbers });
    } while (wanted > 0 && i < tokens.length && !Object.hasOwn(NUMBERS, tokens[i]!));
  }
  return parts.length > 0 ? parts : undefined;
}

export interface LogoPicture {
  readonly type: 'png' | 'jpeg';
  readonly bytes: Uint8Array;
  /** Dots. */
  readonly width: number;
  readonly height: number;
  /** Nothing see-through in it and its rows in order: it goes onto paper as it is, so every engine writes the same bytes. */
  readonly plain: boolean;
}

/** The bytes of a data URI of the schema's form, and the size they claim; undefined where they are no such picture. */
export function readLogoPicture(data: string): LogoPicture | undefined {
  const [head = '', text = ''] = data.split(',');
  const bytes = Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
  const size = head.includes('image/png') ? pngSize(bytes) : jpegSize(bytes);
  if (!size || size.width === 0 || size.height === 0) return undefined;
  if (!head.includes('image/png')) return { type: 'jpeg', bytes, ...size, plain: true };
  return { type: 'png', bytes, ...size, plain: isPlainPng(bytes) };
}

type Size = Pick<LogoPicture, 'width' | 'height'>;

/** PNG, third edition (W3C), 5.2 and 11.2.1: the signature, then the header. */
function pngSize(bytes: Uint8Array): Size | undefined {
  const begin = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52];
  if (bytes.length < 33 || begin.some((b, i) => bytes[i] !== b)) return undefined;
  const view = new DataView(bytes.buffer);
  return { width: view.getUint32(16), height: view.getUint32(20) };
}

/** PNG, third edition, 11.2.1 (colour types 4 and 6 have alpha; interlace method 1) and 11.3.1.1 (tRNS). */
function isPlainPng(bytes: Uint8Array): boolean {
  const view = new DataView(bytes.buffer);
  if ((bytes[25]! & 4) !== 0 || bytes[28] !== 0) return false;
  for (let at = 8; at + 12 <= bytes.length; at += 12 + view.getUint32(at)) {
    if (view.getUint32(at + 4) === 0x74524e53) return false;
  }
  return true;
}

/** ITU-T T.81, annex B: segments by their length until the one that says the frame. */
function jpegSize(bytes: Uint8Array): Size | undefined {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return undefined;
  const view = new DataView(bytes.buffer);
  for (let at = 2; at + 9 <= bytes.length && bytes[at] === 0xff;) {
    const marker = bytes[at + 1]!;
    // Baseline, extended or progressive; others are not drawn everywhere.
    if (marker >= 0xc0 && marker <= 0xc2) return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    if (marker === 0xda) return undefined;
    at += 2 + view.getUint16(at + 2);
  }
  return undefined;
}
