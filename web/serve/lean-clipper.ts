import type { Plugin } from 'vite';

const LIBRARY = /\/clipper-lib\/clipper\.js$/;
const FROM = '\t// Copyright (c) 2005  Tom Wu';
const TO = '\t// end of Int128 section';

/** All that the library asks of its large numbers: two products, and whether they are the same. */
const LARGE_NUMBERS = `\tvar Int128 = {
\t\tInt128Mul: function (a, b) { return BigInt(a) * BigInt(b); },
\t\top_Equality: function (a, b) { return a === b; }
\t};
`;

/**
 * The clipping library without the arithmetic for large numbers that it brought along before JavaScript had BigInt, and
 * with its switches thrown: a quarter less to load before the first plate. Takes and gives source text; throws when the
 * library is no longer written as it was.
 */
export function leanClipperSource(source: string): string {
  const [from, to] = [source.indexOf(FROM), source.indexOf(TO)];
  const rest = source.slice(to);
  const asked = new Set([...rest.matchAll(/\bInt128\.(\w+)/g)].map(([, name]) => name));
  if (from < 0 || to < from || [...asked].some((name) => name !== 'Int128Mul' && name !== 'op_Equality')) {
    throw new Error('clipper-lib is no longer written as web/serve/lean-clipper.ts knows it');
  }
  return (source.slice(0, from) + LARGE_NUMBERS + rest)
    .replaceAll(/ClipperLib\.use_xyz(?!\s*=[^=])/g, 'false')
    .replaceAll(/ClipperLib\.use_lines(?!\s*=[^=])/g, 'true');
}

export function leanClipper(): Plugin {
  return {
    name: 'lean-clipper',
    apply: 'build',
    transform: {
      filter: { id: LIBRARY },
      handler: (code) => ({ code: leanClipperSource(code), map: null }),
    },
  };
}
