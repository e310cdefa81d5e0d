import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadFaces, packageFile } from '../../fonts/node-faces.ts';
import { ownFaceFrom } from '../../fonts/own-face.ts';
import { readFace } from '../../geometry/adapters/opentype.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import { ownFaceSchema } from '../../geometry/design/schema.ts';
import { seeded } from '../judge/seeded.ts';

const GOOD = new Uint8Array(readFileSync(packageFile('@fontsource/oswald', 'files/oswald-latin-700-normal.woff')));
const OTHER = new Uint8Array(
  readFileSync(packageFile('@fontsource/bebas-neue', 'files/bebas-neue-latin-400-normal.woff')),
);
const PACKED = new Uint8Array(readFileSync(packageFile('@fontsource/oswald', 'files/oswald-latin-700-normal.woff2')));
const bytesOf = (text: string) => new TextEncoder().encode(text);

test('an own font goes into the design and comes out as the same face', async () => {
  const made = ownFaceFrom(GOOD, 'C:\\fonts\\My Oswald.woff');
  if ('problem' in made) throw new Error(made.problem);
  expect(ownFaceSchema.parse(made.ownFace)).toEqual(made.ownFace);
  const design = { elements: [{ kind: 'lineText', face: made.ownFace.id }], ownFaces: [made.ownFace] };
  const { faces, problems } = await loadFaces(design);
  expect(problems).toEqual([]);
  const direct = readFace('x', GOOD);
  if ('problem' in direct) throw new Error(direct.problem);
  expect(faces.get(made.ownFace.id)?.glyph('R')).toEqual(direct.face.glyph('R'));
  expect(faces.get(made.ownFace.id)?.glyph('\u{1f350}')).toBeUndefined();
});

describe('a file that is no usable font gets a sentence that says what to do', () => {
  test.each([
    ['nothing in it', new Uint8Array(0), /empty/],
    ['WOFF2', PACKED, /Convert/],
    ['a web page', bytesOf('\n<!DOCTYPE html><html><body>404</body></html>'), /web page/],
    ['an archive', bytesOf('PK\u0003\u0004 fonts.zip and so on'), /Unpack/],
    ['a picture', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 0, 0), /not a font file/],
    ['a collection', bytesOf('ttcf\u0000\u0001\u0000\u0000\u0000\u0000'), /several faces/],
    ['cut short', GOOD.slice(0, 9000), /cut short/],
    ['a header alone', GOOD.slice(0, 20), /cut short/],
    ['too large', new Uint8Array(6_000_001).fill(1), /at most 6 MB/],
  ])('%s', (_, bytes, sentence) => {
    const outcome = ownFaceFrom(bytes, 'font.ttf');
    expect('problem' in outcome && outcome.problem).toMatch(sentence);
  });

  test('a design whose own font was damaged still loads, and says so', async () => {
    const ownFaces = [{ id: 'own:0badf00d', name: 'Family face', data: 'this is not base64!' }];
    const { problems } = await loadFaces({ elements: [{ kind: 'lineText', face: 'own:0badf00d' }], ownFaces });
    expect(problems[0]?.problem).toMatch(/Family face.*Add the font file again/);
  });
});

test('a font that another is called by is refused, and two of the same first digits are never taken for each other', async () => {
  const made = ownFaceFrom(GOOD, 'one.woff');
  const second = ownFaceFrom(OTHER, 'two.woff');
  if (!('ownFace' in made && 'ownFace' in second)) throw new Error('unread');
  const { id, data } = made.ownFace;
  expect(id).toMatch(/^own:[0-9a-f]{64}$/);
  const withFace = (face: object) =>
    readDesign(JSON.stringify({ ...emptyDesign(), ownFaces: [{ ...made.ownFace, ...face }] }));
  expect(withFace({})).toHaveProperty('design');
  expect(withFace({ id: id.slice(0, 12) })).toHaveProperty('design');
  for (const face of [{ data: second.ownFace.data }, { id: second.ownFace.id }, { id: 'own:00000000' }, { data: '' }]) {
    expect(withFace(face)).toHaveProperty('words.key', 'document.faceMiscalled');
  }
  // Twins of eight digits, as a search finds them: each design gets the letters of its own file.
  const twin = (own: string) => ({
    elements: [{ kind: 'lineText', face: id.slice(0, 12) }],
    ownFaces: [{ id: id.slice(0, 12), name: 'Twin', data: own }],
  });
  const letters = async (own: string) => (await loadFaces(twin(own))).faces.get(id.slice(0, 12))!;
  const [one, two] = [await letters(data), await letters(second.ownFace.data)];
  expect(one.glyph('R')).not.toEqual(two.glyph('R'));
  // Outlines are kept by this name.
  expect([one.id, two.id]).toEqual([id, second.ownFace.id]);
});

test('200 fonts with bytes turned over at random (fixed seed) never throw', () => {
  const random = seeded(20261125);
  const next = (below: number) => random.whole(0, below - 1);
  let refused = 0;
  for (let round = 0; round < 200; round++) {
    const bytes = GOOD.slice();
    for (let hits = 0; hits < 1 + (round % 20); hits++) bytes[next(round % 2 ? bytes.length : 500)] = next(256);
    const outcome = readFace('x', bytes);
    if ('problem' in outcome) {
      expect(outcome.problem).toMatch(/^[A-Z].*\.$/);
      refused++;
    } else {
      for (const char of 'ABCabc012&#é') outcome.face.glyph(char);
      expect(Number.isFinite(outcome.face.kern('A', 'V'))).toBe(true);
      expect(outcome.face.capHeight).toBeGreaterThan(0);
    }
  }
  expect(refused).toBeGreaterThan(20);
});
