import type { Tone } from '../../../geometry/artwork/painted.ts';

/**
 * Whether a paint reads as dark or light; undefined where it paints nothing.
 * Halfway is CIE lightness 50 (relative luminance 0.184), a colour that looks as far from black as from white.
 * Names are the sixteen of HTML 4.01 and the commonest of CSS Color 4; one not known here counts as dark, as ink does.
 */
export function toneOf(paint: string, opacity: number, currentColor: string): Tone | undefined {
  const text = paint.trim().toLowerCase();
  if (text === 'none' || text === 'transparent' || !(opacity > LEAST_OPACITY)) return undefined;
  if (text === 'currentcolor') return currentColor === paint ? 'dark' : toneOf(currentColor, opacity, 'black');
  const rgb = readColour(text);
  if (rgb === undefined) return 'dark';
  const [r, g, b, alpha] = rgb;
  if (alpha < LEAST_OPACITY) return undefined;
  return 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b) > MIDDLE ? 'light' : 'dark';
}

/** What is less opaque than this cannot be told from nothing painted. */
export const LEAST_OPACITY = 0.02;

const MIDDLE = 0.184;

function readColour(text: string): [number, number, number, number] | undefined {
  const named = NAMED[text];
  const hex = /^#([0-9a-f]{3,8})$/.exec(named ?? text)?.[1];
  if (hex !== undefined) {
    const long = hex.length <= 4 ? [...hex].map((c) => c + c).join('') : hex;
    const at = (i: number): number => parseInt(long.slice(2 * i, 2 * i + 2), 16) / 255;
    if (long.length === 6) return [at(0), at(1), at(2), 1];
    return long.length === 8 ? [at(0), at(1), at(2), at(3)] : undefined;
  }
  const call = /^(rgba?|hsla?)\(([^)]*)\)$/.exec(text);
  if (!call) return undefined;
  const parts = call[2]!.split(/[\s,/]+/).filter((p) => p !== '');
  const share = (p: string | undefined, whole: number): number =>
    p === undefined ? 1 : p.endsWith('%') ? parseFloat(p) / 100 : parseFloat(p) / whole;
  const alpha = share(parts[3], 1);
  if (call[1]!.startsWith('rgb')) return [share(parts[0], 255), share(parts[1], 255), share(parts[2], 255), alpha];
  const [h, s, l] = [parseFloat(parts[0] ?? '0'), share(parts[1], 100), share(parts[2], 100)];
  const channel = (n: number): number => {
    const k = (((n + h / 30) % 12) + 12) % 12;
    return l - s * Math.min(l, 1 - l) * Math.max(-1, Math.min(k - 3, 9 - k, 1));
  };
  return [channel(0), channel(8), channel(4), alpha];
}

/** Below it sRGB is linear (IEC 61966-2-1). */
const LINEAR_BELOW = 0.04045;

/** sRGB to light (IEC 61966-2-1). */
function linear(v: number): number {
  const c = Math.min(1, Math.max(0, Number.isFinite(v) ? v : 0));
  return c <= LINEAR_BELOW ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
}

const NAMED: Readonly<Record<string, string>> = {
  black: '#000000', silver: '#c0c0c0', gray: '#808080', grey: '#808080', white: '#ffffff', maroon: '#800000',
  red: '#ff0000', purple: '#800080', fuchsia: '#ff00ff', magenta: '#ff00ff', green: '#008000', lime: '#00ff00',
  olive: '#808000', yellow: '#ffff00', navy: '#000080', blue: '#0000ff', teal: '#008080', aqua: '#00ffff',
  cyan: '#00ffff', orange: '#ffa500', gold: '#ffd700', ivory: '#fffff0', beige: '#f5f5dc', snow: '#fffafa',
  whitesmoke: '#f5f5f5', lightgray: '#d3d3d3', lightgrey: '#d3d3d3', pink: '#ffc0cb', wheat: '#f5deb3',
  linen: '#faf0e6', khaki: '#f0e68c', tan: '#d2b48c', gainsboro: '#dcdcdc', floralwhite: '#fffaf0',
}; // prettier-ignore
