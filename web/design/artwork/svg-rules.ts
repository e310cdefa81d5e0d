import { spend } from '../../../geometry/measure/counted-work.ts';

/** What a rule or a style attribute says of each property. */
export type Declarations = ReadonlyMap<string, Declared>;

export interface Declared {
  readonly value: string;
  readonly important: boolean;
}

/** All style sheets of a file, ready to be asked about its elements. */
export interface Rules {
  /** True where something that paints could not be understood, so that the drawing may look different from what is read. */
  readonly partly: boolean;
  /** The rules for this element, what counts least first. */
  of(element: Element): readonly Declarations[];
}

/** `g.ink` as one part of `g.ink > path`. */
interface Compound {
  readonly name: string | undefined;
  readonly ids: readonly string[];
  readonly classes: readonly string[];
  /** The part before it is its parent, or any element around it. */
  readonly child: boolean;
}

interface Rule {
  readonly parts: readonly Compound[];
  readonly weight: number;
  readonly order: number;
  readonly declared: Declarations;
}

/** Properties that change what is painted. */
const PAINTS = /^(fill|stroke|color|display|visibility|opacity|clip-path|mask|filter|transform|d|r|x|y|cx|cy|rx|ry|width|height)(-|$)/; // prettier-ignore
/** What no still drawing shows. */
const NEVER = /:(hover|focus|focus-within|focus-visible|active|visited|target)\b|::/;
const MOST_TEXT = 400_000;
const MOST_RULES = 5_000;
const MOST_PARTS = 12;

/**
 * Style sheets (CSS Syntax 3; Selectors 4 of names, classes, ids, and what stands in what: `g.ink > path`). Everything
 * else that would change the picture is told by `partly`, never passed over in silence. Work is counted.
 */
export function readRules(sheets: readonly string[]): Rules {
  const rules: Rule[] = [];
  let partly = false;
  let room = MOST_TEXT;
  for (const sheet of sheets) {
    if (sheet.length > room) partly = true;
    const text = sheet.slice(0, room);
    room -= text.length;
    for (const { selectors, body } of blocksOf(withoutComments(text))) {
      if (selectors.startsWith('@')) {
        // Fonts, key frames and page sizes paint no shape of a still drawing.
        if (!/^@(charset|namespace|font-face|(-\w+-)?keyframes|page)\b/i.test(selectors))
          partly ||= paints(body ?? 'fill:');
        continue;
      }
      if (body === undefined) continue;
      if (body.includes('{')) {
        partly ||= paints(body);
        continue;
      }
      const declared = readDeclarations(body);
      const tells = [...declared].some(
        ([name, { value }]) => PAINTS.test(name) || (name.startsWith('--') && value !== ''),
      );
      if (!tells) continue;
      if ([...declared.values()].some(({ value }) => /\bvar\s*\(/i.test(value))) partly = true;
      for (const selector of selectors.split(',')) {
        if (NEVER.test(selector)) continue;
        const parts = partsOf(selector.trim());
        if (!parts || rules.length >= MOST_RULES) partly = true;
        else rules.push({ parts, weight: weightOf(parts), order: rules.length, declared });
      }
    }
  }
  return { partly, of: asked(rules) };
}

/** `fill: red; stroke: none` as its parts; the last of one name counts, unless an earlier one is important. */
export function readDeclarations(body: string): Map<string, Declared> {
  const declared = new Map<string, Declared>();
  spend(body.length / 20);
  for (const part of body.split(';')) {
    const colon = part.indexOf(':');
    if (colon < 0) continue;
    const name = part.slice(0, colon).trim().toLowerCase();
    const written = part.slice(colon + 1).trim();
    const sign = written.lastIndexOf('!');
    const important =
      sign >= 0 &&
      written
        .slice(sign + 1)
        .trim()
        .toLowerCase() === 'important';
    if (declared.get(name)?.important && !important) continue;
    declared.set(name, { value: important ? written.slice(0, sign).trim() : written, important });
  }
  return declared;
}

function paints(body: string): boolean {
  return body.split(/[;{}]/).some((part) =>
    PAINTS.test(
      part
        .trim()
        .toLowerCase()
        .replace(/\s*:.*$/s, ''),
    ),
  );
}

/** By hand, as all of this file: patterns would go back and forth over a long comment that never ends. */
function withoutComments(text: string): string {
  let out = '';
  let at = 0;
  for (;;) {
    const open = text.indexOf('/*', at);
    if (open < 0) return out + text.slice(at);
    out += `${text.slice(at, open)} `;
    const end = text.indexOf('*/', open + 2);
    if (end < 0) return out;
    at = end + 2;
  }
}

/** What stands before each block, and the block; an at-rule that ends with a semicolon has none. */
function blocksOf(text: string): { readonly selectors: string; readonly body?: string }[] {
  const blocks: { selectors: string; body?: string }[] = [];
  let [from, depth, open, quote] = [0, 0, 0, ''];
  for (let i = 0; i < text.length; i++) {
    const c = text[i]!;
    if (quote) {
      if (c === '\\') i++;
      else if (c === quote || c === '\n') quote = '';
    } else if (c === '"' || c === "'") quote = c;
    else if (c === '{') {
      if (depth++ === 0) open = i;
    } else if (c === '}') {
      if (depth > 0 && --depth === 0)
        blocks.push({ selectors: text.slice(from, open).trim(), body: text.slice(open + 1, i) });
      if (depth === 0) from = i + 1;
    } else if (c === ';' && depth === 0) {
      blocks.push({ selectors: text.slice(from, i).trim() });
      from = i + 1;
    }
  }
  return blocks;
}

const NAME = '[\\w\\u0080-\\uffff-]+';
const COMPOUND = new RegExp(`^(\\*|${NAME})?((?:[.#]${NAME})*)$`);

function partsOf(selector: string): Compound[] | undefined {
  if (selector === '' || selector.length > 500) return undefined;
  const words = selector.replaceAll('>', ' > ').trim().split(/\s+/);
  const parts: Compound[] = [];
  let child = false;
  for (const word of words) {
    if (word === '>') {
      if (child || parts.length === 0) return undefined;
      child = true;
      continue;
    }
    const [whole, name, rest = ''] = COMPOUND.exec(word) ?? [];
    if (!whole) return undefined;
    const marks = rest.match(new RegExp(`[.#]${NAME}`, 'g')) ?? [];
    const named = (sign: string): string[] => marks.filter((m) => m.startsWith(sign)).map((m) => m.slice(1));
    parts.push({ name: name === '*' ? undefined : name, ids: named('#'), classes: named('.'), child });
    child = false;
  }
  return child || parts.length > MOST_PARTS ? undefined : parts;
}

/** Ids before classes before names (Selectors 4, 17). */
function weightOf(parts: readonly Compound[]): number {
  return parts.reduce((sum, p) => sum + 10_000 * p.ids.length + 100 * p.classes.length + (p.name ? 1 : 0), 0);
}

/** Rules are kept by what their last part asks for, so that an element is held against few of them. */
function asked(rules: readonly Rule[]): Rules['of'] {
  const kept = new Map<string, Rule[]>();
  for (const rule of rules) {
    const last = rule.parts.at(-1)!;
    const key = last.ids[0] ? `#${last.ids[0]}` : last.classes[0] ? `.${last.classes[0]}` : (last.name ?? '*');
    const others = kept.get(key);
    if (others) others.push(rule);
    else kept.set(key, [rule]);
  }
  return (element) => {
    const keys = [
      `#${element.getAttribute('id') ?? ''}`,
      ...classesOf(element).map((c) => `.${c}`),
      element.localName,
      '*',
    ];
    const found = [...new Set(keys)].flatMap((key) => kept.get(key) ?? []);
    return found
      .filter((rule) => fits(element, rule.parts, rule.parts.length - 1))
      .sort((a, b) => a.weight - b.weight || a.order - b.order)
      .map(({ declared }) => declared);
  };
}

function fits(element: Element, parts: readonly Compound[], index: number): boolean {
  spend(2);
  const part = parts[index]!;
  if (part.name !== undefined && part.name !== element.localName) return false;
  if (part.ids.some((id) => id !== element.getAttribute('id'))) return false;
  if (part.classes.length > 0) {
    const classes = classesOf(element);
    if (!part.classes.every((c) => classes.includes(c))) return false;
  }
  if (index === 0) return true;
  for (let around = element.parentElement; around; around = part.child ? null : around.parentElement)
    if (fits(around, parts, index - 1)) return true;
  return false;
}

function classesOf(element: Element): string[] {
  const text = element.getAttribute('class');
  if (text === null) return [];
  spend(text.length / 20);
  return text.split(/\s+/);
}
