import type { Outline, PathCommand } from '../shapes.ts';
import { say } from '../sentences/say.ts';
import type { Wording } from '../sentences/wording.ts';

const COUNTS: Record<string, number> = { M: 2, L: 2, Q: 4, C: 6, Z: 0 };
const TOKEN = /[MLQCZ]|[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?|[^\s,]/g;

/**
 * SVG path data (SVG 2, 9.3) of M, L, Q, C and Z with absolute numbers only, as designs carry it.
 * Out: the outline, y as given; or what is wrong with it, as the end of a sentence. Every subpath must begin with M.
 */
export function readPathData(data: string): { readonly outline: Outline } | { readonly problem: Wording } {
  const tokens = data.match(TOKEN) ?? [];
  const outline: PathCommand[] = [];
  let letter = '';
  let at = 0;
  let open = false;
  while (at < tokens.length) {
    const token = tokens[at]!;
    if (token in COUNTS) {
      letter = token;
      at++;
    } else if (letter === 'M') letter = 'L';
    else if (letter === '' || letter === 'Z')
      return { problem: say('reading.pathCommand', { token: token.slice(0, 12) }) };
    if (!open && letter !== 'M' && letter !== 'Z') return { problem: say('reading.pathNowhere') };
    const numbers = tokens.slice(at, at + COUNTS[letter]!).map(Number);
    if (numbers.length < COUNTS[letter]! || numbers.some((n) => !Number.isFinite(n)))
      return { problem: say('reading.pathNumbers') };
    at += numbers.length;
    outline.push(commandOf(letter, numbers));
    open = letter === 'M' || (open && letter !== 'Z');
  }
  return { outline };
}

/** The same the other way, numbers rounded to so many decimals. */
export function writePathData(outline: Outline, decimals: number): string {
  const n = (value: number): string => String(Number(value.toFixed(decimals)) + 0);
  return outline
    .map((c) => {
      switch (c.type) {
        case 'Z':
          return 'Z';
        case 'Q':
          return `Q${n(c.x1)} ${n(c.y1)} ${n(c.x)} ${n(c.y)}`;
        case 'C':
          return `C${n(c.x1)} ${n(c.y1)} ${n(c.x2)} ${n(c.y2)} ${n(c.x)} ${n(c.y)}`;
        default:
          return `${c.type}${n(c.x)} ${n(c.y)}`;
      }
    })
    .join('');
}

function commandOf(letter: string, [a, b, c, d, e, f]: number[]): PathCommand {
  switch (letter) {
    case 'M':
      return { type: 'M', x: a!, y: b! };
    case 'L':
      return { type: 'L', x: a!, y: b! };
    case 'Q':
      return { type: 'Q', x1: a!, y1: b!, x: c!, y: d! };
    case 'C':
      return { type: 'C', x1: a!, y1: b!, x2: c!, y2: d!, x: e!, y: f! };
    default:
      return { type: 'Z' };
  }
}
