import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEEPEST_JSON, jsonFault, lineOfPart } from '../../geometry/design/json-places.ts';

const TEXT = `{
  "name": "a } \\" brace",
  "list": [
    1,
    { "x":
      2
    }
  ], "last": null
}`;

describe('the line of a part of a JSON text', () => {
  it.each([
    [[], 1],
    [['name'], 2],
    [['list'], 3],
    [['list', 0], 4],
    [['list', 1], 5],
    [['list', 1, 'x'], 5],
    [['list', 1, 'missing', 'deeper'], 5],
    [['list', 9], 3],
    [['last'], 8],
    [['missing'], 1],
  ])('of %j is %i', (path, line) => {
    expect(lineOfPart(TEXT, path)).toBe(line);
  });

  it('is where any value was put, in any text that the engine writes', () => {
    fc.assert(
      fc.property(fc.dictionary(safeName(), fc.jsonValue({ maxDepth: 4 }), { minKeys: 1 }), (value) => {
        const names = Object.keys(value);
        const text = JSON.stringify(value, null, 1);
        const top = text.split('\n').flatMap((line, i) => (/^ "/.test(line) ? [i + 1] : []));
        expect(names.map((name) => lineOfPart(text, [name]))).toEqual(top);
      }),
      { seed: 3 },
    );
  });
});

describe('a text that is no JSON', () => {
  it.each([
    ['', 1],
    ['{\n"a": 1,\n}', 3],
    ['{\n"a": 1,,\n}', 2],
    ['[1\n2]', 2],
    ['{"a":\n01}', 2],
    ['{"a":\n\n"b\nc"}', 3],
    ["{'a': 1}", 1],
    ['[1]\n\n]', 3],
    ['{"a": tru}', 1],
  ])('%j is broken in line %i', (text, line) => {
    expect(jsonFault(text)).toEqual({ kind: 'broken', line });
  });

  it('is told from one that is exactly as the engine tells it', () => {
    const spoiled = fc
      .tuple(
        fc.jsonValue({ maxDepth: 3 }),
        fc.nat(),
        fc.constantFrom('', ',', '"', '}', ']', '{', '1', '\\', '\n', 'e', '-', '.'),
      )
      .map(([value, where, sign]) => {
        const text = JSON.stringify(value, null, 1);
        const at = where % (text.length + 1);
        return `${text.slice(0, at)}${sign}${text.slice(at + (where % 2))}`;
      });
    fc.assert(
      fc.property(spoiled, (text) => {
        const fault = jsonFault(text);
        if (fault !== undefined && fault.kind !== 'broken') return;
        expect(fault === undefined).toBe(isJson(text));
      }),
      { numRuns: 3000, seed: 5 },
    );
  });

  it('is also one that cannot be meant', () => {
    expect(jsonFault('{"a": 1,\n"b": 2,\n"a": 3}')).toEqual({ kind: 'twice', line: 3, name: 'a' });
    expect(jsonFault('{"a": {\n"__proto__": {}}}')).toEqual({ kind: 'forbidden', line: 2, name: '__proto__' });
    expect(jsonFault('{"\\u005f_proto__": 1}')).toEqual({ kind: 'forbidden', line: 1, name: '__proto__' });
    expect(jsonFault(`"${'x'.repeat(4e6)}`)).toMatchObject({ kind: 'broken', line: 1 });
    expect(jsonFault('['.repeat(1e6))).toEqual({ kind: 'deep', line: 1 });
    const deepest = '['.repeat(DEEPEST_JSON) + ']'.repeat(DEEPEST_JSON);
    expect(jsonFault(deepest)).toBeUndefined();
    expect(jsonFault(`[${deepest}]`)?.kind).toBe('deep');
  });
});

function safeName(): fc.Arbitrary<string> {
  return fc.string().filter((name) => name !== '__proto__' && !/^\d+$/.test(name));
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
