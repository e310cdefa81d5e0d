/** What is looked at of an element's style, with what it inherits (SVG 2, 6). */
export interface Style {
  readonly fill: string;
  readonly fillRule: string;
  readonly fillOpacity: string;
  readonly stroke: string;
  readonly strokeWidth: string;
  readonly strokeLinecap: string;
  readonly strokeLinejoin: string;
  readonly strokeMiterlimit: string;
  readonly strokeOpacity: string;
  readonly visibility: string;
  readonly color: string;
}

/** Initial values of SVG 2's property index. */
export const INITIAL: Style = {
  fill: 'black',
  fillRule: 'nonzero',
  fillOpacity: '1',
  stroke: 'none',
  strokeWidth: '1',
  strokeLinecap: 'butt',
  strokeLinejoin: 'miter',
  strokeMiterlimit: '4',
  strokeOpacity: '1',
  visibility: 'visible',
  color: 'black',
};

/** Not inherited. */
export interface OwnStyle {
  readonly display: string;
  readonly opacity: string;
  readonly clipped: boolean;
}

const NAMES: readonly (readonly [keyof Style, string])[] = [
  ['fill', 'fill'],
  ['fillRule', 'fill-rule'],
  ['fillOpacity', 'fill-opacity'],
  ['stroke', 'stroke'],
  ['strokeWidth', 'stroke-width'],
  ['strokeLinecap', 'stroke-linecap'],
  ['strokeLinejoin', 'stroke-linejoin'],
  ['strokeMiterlimit', 'stroke-miterlimit'],
  ['strokeOpacity', 'stroke-opacity'],
  ['visibility', 'visibility'],
  ['color', 'color'],
];

/** One rule of a style sheet: a plain selector and what it declares. */
export interface Rule {
  readonly selector: string;
  readonly declared: ReadonlyMap<string, string>;
}

/**
 * Rules for `name`, `.class` and `#id` of a style sheet, in their order. Everything else (imports, nested rules,
 * longer selectors) is passed over.
 */
export function readRules(sheet: string): Rule[] {
  const rules: Rule[] = [];
  const text = sheet.replace(/\/\*[\s\S]*?\*\//g, '').slice(0, 200_000);
  for (const [, selectors, body] of text.matchAll(/([^{}]*)\{([^{}]*)\}/g)) {
    const names = selectors!.replace(/^[\s\S]*;/, '');
    if (names.includes('@')) continue;
    const declared = readDeclarations(body!);
    for (const selector of names.split(',').map((s) => s.trim()))
      if (/^[.#]?[\w-]+$/.test(selector)) rules.push({ selector, declared });
  }
  return rules;
}

/** The style of an element: what it inherits, its attributes, style sheets, its own style, each over the one before. */
export function styleOf(element: Element, parent: Style, rules: readonly Rule[]): Style & OwnStyle {
  const declared = new Map<string, string>();
  for (const name of [...NAMES.map(([, n]) => n), 'display', 'opacity', 'clip-path', 'mask', 'filter']) {
    const value = element.getAttribute(name);
    if (value !== null) declared.set(name, value);
  }
  const classes = (element.getAttribute('class') ?? '').split(/\s+/);
  const id = element.getAttribute('id');
  // By how much a selector says: names, then classes, then ids (CSS Selectors 4, 17).
  for (const wanted of ['', '.', '#'])
    for (const { selector, declared: more } of rules) {
      const kind = selector.startsWith('.') || selector.startsWith('#') ? selector[0]! : '';
      if (kind !== wanted) continue;
      const name = kind === '' ? selector : selector.slice(1);
      if (kind === '' ? name !== element.localName : kind === '.' ? !classes.includes(name) : name !== id) continue;
      more.forEach((value, key) => declared.set(key, value));
    }
  readDeclarations(element.getAttribute('style') ?? '').forEach((value, key) => declared.set(key, value));
  const style: Record<string, string> = { ...parent };
  for (const [key, name] of NAMES) {
    const value = declared.get(name)?.trim();
    if (value !== undefined && value !== '' && value !== 'inherit') style[key] = value;
  }
  const effect = (name: string): boolean => !['none', '', undefined].includes(declared.get(name)?.trim());
  return {
    ...(style as unknown as Style),
    display: declared.get('display')?.trim() ?? 'inline',
    opacity: declared.get('opacity')?.trim() ?? '1',
    clipped: effect('clip-path') || effect('mask') || effect('filter'),
  };
}

function readDeclarations(body: string): Map<string, string> {
  const declared = new Map<string, string>();
  for (const part of body.split(';')) {
    const colon = part.indexOf(':');
    if (colon < 0) continue;
    const name = part.slice(0, colon).trim().toLowerCase();
    declared.set(name, part.slice(colon + 1).replace(/!\s*important/i, '').trim()); // prettier-ignore
  }
  return declared;
}
