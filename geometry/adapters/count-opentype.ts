import opentype from 'opentype.js';
import type { Font } from 'opentype.js';
import { spend } from '../measure/counted-work.ts';

type Method = (this: { points?: readonly unknown[] }, ...args: unknown[]) => unknown;
type Methods = Record<string, Method>;

/**
 * Lets the font reader tell what it does (counted-work.ts): tables may point at the same part over and over, and glyphs
 * be made of glyphs, so that a file of a kilobyte says billions of things.
 */
export function countOpentype(): void {
  const { _parse, Glyph } = opentype as unknown as {
    _parse: Methods & { Parser: { prototype: Methods } };
    Glyph: { prototype: Methods };
  };
  const around = (methods: Methods, name: string, cost: (result: unknown) => number): void => {
    const inner = methods[name]!;
    methods[name] = function (...args) {
      spend(1);
      const result = inner.apply(this, args);
      spend(cost(result));
      return result;
    };
  };
  for (const name of ['getByte', 'getCard8', 'getUShort', 'getCard16', 'getShort', 'getULong', 'getOffset'])
    if (_parse[name]) around(_parse, name, () => 0);
  around(_parse, 'getBytes', lengthOf);
  const parser = _parse.Parser.prototype;
  for (const name of Object.keys(parser)) if (name.startsWith('parse')) around(parser, name, lengthOf);
  // Each use of a glyph within another takes over all its points.
  const path = Glyph.prototype['getPath']!;
  Glyph.prototype['getPath'] = function (...args) {
    spend(1);
    const result = path.apply(this, args);
    spend(this.points?.length ?? 0);
    return result;
  };
}

/** Subroutines of a font of PostScript outlines call each other: each call counts as long as it is (Adobe note 5177). */
export function countSubroutines(font: Font): void {
  type Calls = readonly unknown[];
  interface Dict {
    _subrs?: Calls;
    _fdArray?: Dict[];
  }
  const parts = font as unknown as { gsubrs?: Calls; tables: { cff?: { topDict?: Dict } } };
  if (parts.gsubrs) parts.gsubrs = counted(parts.gsubrs);
  const top = parts.tables.cff?.topDict;
  for (const dict of top ? [top, ...(top._fdArray ?? [])] : []) if (dict._subrs) dict._subrs = counted(dict._subrs);
}

function counted(calls: readonly unknown[]): readonly unknown[] {
  return new Proxy(calls, {
    get(all, name, self) {
      const call: unknown = Reflect.get(all, name, self);
      spend(4 + lengthOf(call));
      return call;
    },
  });
}

function lengthOf(list: unknown): number {
  return Array.isArray(list) ? list.length : 0;
}
