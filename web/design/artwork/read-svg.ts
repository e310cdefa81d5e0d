import type { WindowLike } from 'dompurify';
import type { Matrix, Painted } from '../../../geometry/artwork/painted.ts';
import { doWithin, spend } from '../../../geometry/measure/counted-work.ts';
import type { Outline } from '../../../geometry/shapes.ts';
import { placed } from '../../../geometry/artwork/through.ts';
import { cleanSvg, type CleanSvg } from './clean-svg.ts';
import { LEAST_OPACITY, toneOf } from './colour.ts';
import { isAbsolute, length, matrixOf, outlineOf, type Viewport } from './svg-shapes.ts';
import { readRules, type Rules } from './svg-rules.ts';
import { declaredBy, INITIAL, type OwnStyle, type Style, styleOf } from './svg-style.ts';
import { svgText, type Refusal } from './svg-text.ts';

/** What was left out of a drawing, as the page has words for it. */
export type Note =
  'scripts' | 'links' | 'pictures' | 'texts' | 'clips' | 'gradients' | 'uses' | 'effects' | 'dashes' | 'rules';

export interface SvgDrawing {
  readonly shapes: readonly Painted[];
  readonly notes: readonly Note[];
  /** Both dark and light are painted, so that it makes a difference which of them is cut. */
  readonly bothTones: boolean;
  /** Millimetres for one unit of the drawing, where the file says how large it is meant to be. */
  readonly mmPerUnit?: number;
}

/** Shapes after all `use` is followed: more are a bomb, not a drawing. */
const MOST_SHAPES = 20_000;
const DEEPEST_USE = 12;
/** Steps of counted work: an element looked at is VISIT of them. Real drawings of 5 MB need a tenth. */
const MOST_STEPS = 2_000_000;
const VISIT = 40;

/**
 * Reads an SVG file into painted shapes; nothing of it is shown, run or fetched.
 * In: the file's bytes, the window whose parser is used (the page's own, or a test's). Out: shapes in CSS pixels, y
 * down, and what was left out; or why the file is refused.
 */
export function readSvg(
  bytes: Uint8Array,
  window: WindowLike & typeof globalThis,
): SvgDrawing | { readonly refused: Refusal } {
  const text = svgText(bytes);
  if ('refused' in text) return text;
  const clean = cleanSvg(text.text, window);
  if ('refused' in clean) return clean;
  return doWithin(MOST_STEPS, () => drawn(clean, text.handlers)) ?? { refused: 'tooMany' };
}

function drawn(clean: CleanSvg, handlers: boolean): SvgDrawing | { readonly refused: Refusal } {
  const rules = readRules(clean.styles);
  const walk: Walk = {
    shapes: [],
    notes: new Set(notesOf(handlers ? ['script', ...clean.dropped] : clean.dropped)),
    rules,
    ids: new Map(),
    known: new Map(),
  };
  if (rules.partly) walk.notes.add('rules');
  for (const e of [clean.root, ...clean.root.querySelectorAll('*')]) {
    const id = e.getAttribute('id');
    if (id !== null && !walk.ids.has(id)) walk.ids.set(id, e);
  }
  const { root } = clean;
  const [wide, tall] = [length(root.getAttribute('width'), 300), length(root.getAttribute('height'), 150)];
  const box = viewBox(root);
  const view = { width: wide ?? box?.[2] ?? 300, height: tall ?? box?.[3] ?? 150 };
  into(walk, root, INITIAL, [1, 0, 0, 1, 0, 0], view, 0, true);
  if (walk.over) return { refused: 'tooMany' };
  if (walk.shapes.length === 0) return { refused: 'nothingDrawn' };
  const tones = new Set(walk.shapes.flatMap((s) => [s.fill?.tone, s.stroke?.tone]).filter((t) => t !== undefined));
  const ruled = isAbsolute(root.getAttribute('width')) || isAbsolute(root.getAttribute('height'));
  return {
    shapes: walk.shapes,
    notes: [...walk.notes],
    bothTones: tones.size > 1,
    ...(ruled ? { mmPerUnit: 25.4 / 96 } : {}),
  };
}

interface Walk {
  readonly shapes: Painted[];
  readonly notes: Set<Note>;
  readonly rules: Rules;
  readonly ids: Map<string, Element>;
  /** What was once worked out of an element: it may be used again and again. */
  readonly known: Map<Element, Known>;
  over?: boolean;
}

interface Known {
  readonly declared: ReadonlyMap<string, string>;
  readonly matrix: Matrix;
  outline?: { readonly view: Viewport; readonly of: Outline | undefined };
}

function knownOf(walk: Walk, e: Element): Known {
  spend(VISIT);
  let known = walk.known.get(e);
  if (!known) {
    known = { declared: declaredBy(e, walk.rules), matrix: matrixOf(e) };
    walk.known.set(e, known);
  }
  return known;
}

function outlineIn(known: Known, e: Element, view: Viewport): Outline | undefined {
  const before = known.outline;
  if (before?.view.width === view.width && before.view.height === view.height) return before.of;
  const text = e.getAttribute('d') ?? e.getAttribute('points') ?? '';
  spend(text.length / 4);
  known.outline = { view, of: outlineOf(e, view) };
  return known.outline.of;
}

function into(walk: Walk, e: Element, from: Style, at: Matrix, view: Viewport, uses: number, shown = false): void {
  if (walk.over) return;
  const known = knownOf(walk, e);
  const style = styleOf(known.declared, from);
  if (style.display === 'none' || Number(style.opacity) < LEAST_OPACITY) return;
  if (style.clipped) walk.notes.add('clips');
  const own = placed(at, known.matrix);
  switch (e.localName) {
    case 'svg':
      nested(walk, e, style, own, view, uses, shown);
      return;
    case 'g':
    case 'a':
      for (const child of childrenOf(e)) into(walk, child, style, own, view, uses);
      return;
    case 'switch': {
      const first = e.firstElementChild;
      if (first) into(walk, first, style, own, view, uses);
      return;
    }
    case 'use':
      used(walk, e, style, own, view, uses);
      return;
    default:
      shape(walk, e, known, style, own, view);
  }
}

/** An inner svg or symbol has a coordinate system of its own (SVG 2, 8.2 and 8.6). */
function nested(
  walk: Walk,
  e: Element,
  style: Style,
  at: Matrix,
  view: Viewport,
  uses: number,
  outermost: boolean,
): void {
  const [wide, tall] = [length(e.getAttribute('width'), view.width), length(e.getAttribute('height'), view.height)];
  const [width, height] = [wide ?? view.width, tall ?? view.height];
  if (!(width > 0) || !(height > 0)) return;
  const x = outermost ? 0 : (length(e.getAttribute('x'), view.width) ?? 0);
  const y = outermost ? 0 : (length(e.getAttribute('y'), view.height) ?? 0);
  const box = viewBox(e);
  const fit = box
    ? fitBox(box, width, height, e.getAttribute('preserveAspectRatio') ?? '')
    : ([1, 0, 0, 1, 0, 0] as const);
  const inner = placed(placed(at, [1, 0, 0, 1, x, y]), fit);
  const innerView = box ? { width: box[2], height: box[3] } : { width, height };
  for (const child of childrenOf(e)) into(walk, child, style, inner, innerView, uses);
}

function used(walk: Walk, e: Element, style: Style, at: Matrix, view: Viewport, uses: number): void {
  const href = (e.getAttribute('href') ?? e.getAttribute('xlink:href') ?? '').trim();
  const target = href.startsWith('#') ? walk.ids.get(href.slice(1)) : undefined;
  if (!target || uses >= DEEPEST_USE || target.contains(e)) {
    walk.notes.add('uses');
    return;
  }
  const x = length(e.getAttribute('x'), view.width) ?? 0;
  const y = length(e.getAttribute('y'), view.height) ?? 0;
  const moved = placed(at, [1, 0, 0, 1, x, y]);
  if (target.localName !== 'symbol') {
    into(walk, target, style, moved, view, uses + 1);
    return;
  }
  const wide = length(e.getAttribute('width'), view.width) ?? view.width;
  const tall = length(e.getAttribute('height'), view.height) ?? view.height;
  const inner = styleOf(knownOf(walk, target).declared, style);
  nested(walk, target, inner, moved, { width: wide, height: tall }, uses + 1, true);
}

function* childrenOf(e: Element): Iterable<Element> {
  for (let child = e.firstElementChild; child; child = child.nextElementSibling) yield child;
}

function shape(walk: Walk, e: Element, known: Known, style: Style & OwnStyle, at: Matrix, view: Viewport): void {
  if (style.visibility !== 'visible') return;
  const outline = outlineIn(known, e, view);
  if (!outline) return;
  if (walk.shapes.length >= MOST_SHAPES) {
    walk.over = true;
    return;
  }
  if (/^url\(/i.test(style.fill) || /^url\(/i.test(style.stroke)) walk.notes.add('gradients');
  const fill = e.localName === 'line' ? undefined : toneOf(plain(style.fill), number(style.fillOpacity), style.color);
  const line = toneOf(plain(style.stroke), number(style.strokeOpacity), style.color);
  const widthMm = length(style.strokeWidth, Math.hypot(view.width, view.height) / Math.SQRT2) ?? 1;
  if (line && style.dashes !== 'none' && style.dashes !== '') walk.notes.add('dashes');
  if (!fill && !(line && widthMm > 0)) return;
  walk.shapes.push({
    outline,
    matrix: at,
    ...(fill ? { fill: { tone: fill, rule: style.fillRule === 'evenodd' ? 'evenodd' : 'nonzero' } } : {}),
    ...(line && widthMm > 0
      ? {
          stroke: {
            tone: line,
            widthMm,
            cap: one(style.strokeLinecap, ['butt', 'round', 'square']),
            join: one(style.strokeLinejoin, ['miter', 'round', 'bevel']),
            miterLimit: Math.min(20, Math.max(1, Number(style.strokeMiterlimit) || 4)),
          },
        }
      : {}),
  });
}

/** A pattern or gradient counts as ink, unless a colour stands behind it for want of it. */
function plain(paint: string): string {
  const behind = /^url\([^)]*\)\s*(.*)$/i.exec(paint);
  return behind ? behind[1] || 'black' : paint;
}

function one<T extends string>(value: string, known: readonly [T, ...T[]]): T {
  return known.find((k) => k === value) ?? known[0];
}

function number(text: string): number {
  const value = text.endsWith('%') ? parseFloat(text) / 100 : parseFloat(text);
  return Number.isFinite(value) ? value : 1;
}

function viewBox(e: Element): readonly [number, number, number, number] | undefined {
  const numbers = (e.getAttribute('viewBox') ?? '').trim().split(/[\s,]+/).map(Number); // prettier-ignore
  if (numbers.length !== 4 || !numbers.every(Number.isFinite)) return undefined;
  const [x, y, w, h] = numbers as [number, number, number, number];
  return w > 0 && h > 0 ? [x, y, w, h] : undefined;
}

/** SVG 2, 8.7: the equivalent transform of a view box. */
function fitBox(
  [x, y, w, h]: readonly [number, number, number, number],
  width: number,
  height: number,
  keep: string,
): Matrix {
  let [sx, sy] = [width / w, height / h];
  const align = /x(Min|Mid|Max)Y(Min|Mid|Max)/.exec(keep);
  if (keep.trim().startsWith('none')) return [sx, 0, 0, sy, -x * sx, -y * sy];
  sx = sy = keep.includes('slice') ? Math.max(sx, sy) : Math.min(sx, sy);
  const share = (word: string | undefined): number => (word === 'Min' ? 0 : word === 'Max' ? 1 : 0.5);
  const dx = (width - w * sx) * share(align?.[1]);
  const dy = (height - h * sy) * share(align?.[2]);
  return [sx, 0, 0, sy, dx - x * sx, dy - y * sy];
}

const DROPPED: readonly (readonly [RegExp, Note])[] = [
  [/^(script|handler|listener|on.*|animate.*|set|foreignobject|iframe|object|embed|audio|video|canvas)$/, 'scripts'],
  [/^(href|xlink:href|src|xml:base|link|cursor)$/, 'links'],
  [/^(image|feimage)$/, 'pictures'],
  [/^(text|tspan|textpath|tref)$/, 'texts'],
  [/^(clippath|mask)$/, 'clips'],
  [/^(lineargradient|radialgradient|pattern|meshgradient|hatch)$/, 'gradients'],
  [/^(filter|marker)$/, 'effects'],
];

function notesOf(dropped: readonly string[]): Note[] {
  return dropped.flatMap((name) => DROPPED.filter(([what]) => what.test(name)).map(([, note]) => note));
}
