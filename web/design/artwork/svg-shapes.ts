import svgpath from 'svgpath';
import type { Matrix } from '../../../geometry/artwork/painted.ts';
import type { Outline, PathCommand } from '../../../geometry/shapes.ts';

/** How large what percentages refer to is. */
export interface Viewport {
  readonly width: number;
  readonly height: number;
}

/** Millimetres, inches and their like to user units at 96 to the inch (CSS Values 4, 6.2). */
const UNITS: Readonly<Record<string, number>> = {
  '': 1, px: 1, in: 96, cm: 96 / 2.54, mm: 96 / 25.4, q: 96 / 101.6, pt: 96 / 72, pc: 16, em: 16, rem: 16, ex: 8,
}; // prettier-ignore

/** A length in user units; undefined when it is none. A percentage is of `whole`. */
export function length(text: string | null, whole: number): number | undefined {
  const found = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(%|[a-z]*)\s*$/i.exec(text ?? '');
  if (!found) return undefined;
  const value = Number(found[1]);
  const by = found[2] === '%' ? whole / 100 : UNITS[found[2]!.toLowerCase()];
  return by === undefined || !Number.isFinite(value * by) ? undefined : value * by;
}

/** Absolute means what a ruler would measure: not px or percent. */
export function isAbsolute(text: string | null): boolean {
  return /^\s*[+-]?[\d.e+-]+\s*(mm|cm|in|pt|pc|q)\s*$/i.test(text ?? '');
}

/** The outline of a basic shape in its own units (SVG 2, 10), or undefined when it draws nothing or can't be read. */
export function outlineOf(element: Element, view: Viewport): Outline | undefined {
  const diagonal = Math.hypot(view.width, view.height) / Math.SQRT2;
  const x = (name: string): number => length(element.getAttribute(name), view.width) ?? 0;
  const y = (name: string): number => length(element.getAttribute(name), view.height) ?? 0;
  switch (element.localName) {
    case 'path':
      return pathOutline(element.getAttribute('d') ?? '');
    case 'rect':
      return rectangle(element, x('x'), y('y'), x('width'), y('height'), view);
    case 'circle': {
      const r = length(element.getAttribute('r'), diagonal) ?? 0;
      return r > 0 ? oval(x('cx'), y('cy'), r, r) : undefined;
    }
    case 'ellipse': {
      const rx = length(element.getAttribute('rx'), view.width);
      const ry = length(element.getAttribute('ry'), view.height);
      const [a, b] = [rx ?? ry ?? 0, ry ?? rx ?? 0];
      return a > 0 && b > 0 ? oval(x('cx'), y('cy'), a, b) : undefined;
    }
    case 'line':
      return [
        { type: 'M', x: x('x1'), y: y('y1') },
        { type: 'L', x: x('x2'), y: y('y2') },
      ];
    case 'polyline':
    case 'polygon': {
      const numbers = (element.getAttribute('points') ?? '').match(/[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?/gi) ?? [];
      const out: PathCommand[] = [];
      for (let i = 0; i + 1 < numbers.length; i += 2)
        out.push({ type: i === 0 ? 'M' : 'L', x: Number(numbers[i]), y: Number(numbers[i + 1]) });
      if (out.length < 2) return undefined;
      return element.localName === 'polygon' ? [...out, { type: 'Z' }] : out;
    }
    default:
      return undefined;
  }
}

/** A transform attribute; the identity where it can't be read. */
export function matrixOf(element: Element): Matrix {
  const text = element.getAttribute('transform');
  if (text === null || text.trim() === '') return [1, 0, 0, 1, 0, 0];
  const corners: number[] = [];
  svgpath('M0 0L1 0L0 1')
    .transform(text.slice(0, 2000))
    .iterate((segment) => {
      corners.push(Number(segment[1]), Number(segment[2]));
    });
  const [e, f, ax, by, cx, dy] = corners as [number, number, number, number, number, number];
  const m: Matrix = [ax - e, by - f, cx - e, dy - f, e, f];
  return m.every(Number.isFinite) ? m : [1, 0, 0, 1, 0, 0];
}

function pathOutline(d: string): Outline | undefined {
  const path = svgpath(d);
  // The library keeps what it could read before a mistake, as SVG 2, 9.5.4 asks.
  const out: PathCommand[] = [];
  let start = { x: 0, y: 0 };
  path
    .abs()
    .unshort()
    .unarc()
    .iterate((segment, _, x, y) => {
      const [type, ...rest] = segment as unknown as [string, ...number[]];
      const n = rest.map(Number);
      if (n.some((v) => !Number.isFinite(v))) return;
      // Going on after Z begins anew from where the subpath began.
      if (type !== 'M' && (out.length === 0 || out.at(-1)!.type === 'Z')) out.push({ type: 'M', ...start });
      if (type === 'M') {
        start = { x: n[0]!, y: n[1]! };
        out.push({ type: 'M', ...start });
      } else if (type === 'L') out.push({ type: 'L', x: n[0]!, y: n[1]! });
      else if (type === 'H') out.push({ type: 'L', x: n[0]!, y });
      else if (type === 'V') out.push({ type: 'L', x, y: n[0]! });
      else if (type === 'Q') out.push({ type: 'Q', x1: n[0]!, y1: n[1]!, x: n[2]!, y: n[3]! });
      else if (type === 'C') out.push({ type: 'C', x1: n[0]!, y1: n[1]!, x2: n[2]!, y2: n[3]!, x: n[4]!, y: n[5]! });
      else if (type === 'Z' || type === 'z') out.push({ type: 'Z' });
    });
  return out.length > 1 ? out : undefined;
}

/** Handle of a quarter circle. */
const QUARTER = 0.5522847498;

function oval(cx: number, cy: number, rx: number, ry: number): Outline {
  return rounded(cx - rx, cy - ry, 2 * rx, 2 * ry, rx, ry);
}

function rectangle(e: Element, x: number, y: number, w: number, h: number, view: Viewport): Outline | undefined {
  if (!(w > 0) || !(h > 0)) return undefined;
  const rx = length(e.getAttribute('rx'), view.width);
  const ry = length(e.getAttribute('ry'), view.height);
  const [a, b] = [Math.min(Math.max(0, rx ?? ry ?? 0), w / 2), Math.min(Math.max(0, ry ?? rx ?? 0), h / 2)];
  if (a > 0 && b > 0) return rounded(x, y, w, h, a, b);
  return [
    { type: 'M', x, y },
    { type: 'L', x: x + w, y },
    { type: 'L', x: x + w, y: y + h },
    { type: 'L', x, y: y + h },
    { type: 'Z' },
  ];
}

function rounded(x: number, y: number, w: number, h: number, rx: number, ry: number): Outline {
  const [r, b] = [x + w, y + h];
  const [kx, ky] = [rx * (1 - QUARTER), ry * (1 - QUARTER)];
  return [
    { type: 'M', x: x + rx, y },
    { type: 'L', x: r - rx, y },
    { type: 'C', x1: r - kx, y1: y, x2: r, y2: y + ky, x: r, y: y + ry },
    { type: 'L', x: r, y: b - ry },
    { type: 'C', x1: r, y1: b - ky, x2: r - kx, y2: b, x: r - rx, y: b },
    { type: 'L', x: x + rx, y: b },
    { type: 'C', x1: x + kx, y1: b, x2: x, y2: b - ky, x, y: b - ry },
    { type: 'L', x, y: y + ry },
    { type: 'C', x1: x, y1: y + ky, x2: x + kx, y2: y, x: x + rx, y },
    { type: 'Z' },
  ];
}
