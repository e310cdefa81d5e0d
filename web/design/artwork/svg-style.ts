import { readDeclarations, type Rules } from './svg-rules.ts';

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
  readonly dashes: string;
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

/** What is asked of an element's own style besides what is inherited. */
const OWN = ['display', 'opacity', 'clip-path', 'mask', 'filter', 'stroke-dasharray'];

/** What an element itself declares: its attributes, style sheets, its own style, each over the one before (CSS Cascade 4). */
export function declaredBy(element: Element, rules: Rules): ReadonlyMap<string, string> {
  const declared = new Map<string, string>();
  for (const name of [...NAMES.map(([, n]) => n), ...OWN]) {
    const value = element.getAttribute(name);
    if (value !== null) declared.set(name, value.trim());
  }
  const sheets = [...rules.of(element), readDeclarations(element.getAttribute('style') ?? '')];
  for (const pressing of [false, true])
    for (const sheet of sheets)
      sheet.forEach(({ value, important }, name) => {
        if (important === pressing) declared.set(name, value);
      });
  return declared;
}

/** The style of an element: what it declares over what it inherits. */
export function styleOf(declared: ReadonlyMap<string, string>, parent: Style): Style & OwnStyle {
  const style: Record<string, string> = { ...parent };
  for (const [key, name] of NAMES) {
    const value = declared.get(name);
    if (value === 'initial') style[key] = INITIAL[key];
    else if (value !== undefined && value !== '' && value !== 'inherit' && value !== 'unset') style[key] = value;
  }
  const effect = (name: string): boolean => !['none', '', undefined].includes(declared.get(name));
  return {
    ...(style as unknown as Style),
    display: declared.get('display') ?? 'inline',
    opacity: declared.get('opacity') ?? '1',
    dashes: declared.get('stroke-dasharray') ?? 'none',
    clipped: effect('clip-path') || effect('mask') || effect('filter'),
  };
}
