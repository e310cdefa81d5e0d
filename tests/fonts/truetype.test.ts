import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { FACES } from '../../fonts/catalogue.ts';
import { printableLatin1 } from '../../fonts/coverage.ts';
import { packageFile } from '../../fonts/node-faces.ts';
import { unpackInBrowser } from '../../fonts/unpack-in-browser.ts';
import { glyfReader } from '../../geometry/adapters/glyf.ts';
import { readFace } from '../../geometry/adapters/opentype.ts';
import { readTrueType } from '../../geometry/adapters/truetype.ts';
import { unpackWoff } from '../../geometry/adapters/unpack-woff.ts';

/** Outside check: the small reader against opentype.js, every glyph of every face to the last digit. */
test.each(FACES)('$id: the small reader draws what opentype.js draws', async (entry) => {
  const bytes = new Uint8Array(readFileSync(packageFile(entry.packageName, entry.file)));
  const kerning = { unitsPerEm: 1000, pairs: {} };
  const plain = await unpackInBrowser(bytes);
  expect(plain).toEqual(unpackWoff(bytes));
  const small = readTrueType(entry.id, entry.name, plain, kerning, entry.joins);
  const large = readFace(entry.id, bytes, kerning, entry.joins);
  if (!small || !('face' in small) || !('face' in large)) throw new Error('not read');
  const { face, face: { capHeight, ascent, descent, joins } } = small; // prettier-ignore
  expect({ capHeight, ascent, descent, joins }).toEqual({
    capHeight: large.face.capHeight,
    ascent: large.face.ascent,
    descent: large.face.descent,
    joins: large.face.joins,
  });
  let drawn = 0;
  for (const char of [...printableLatin1(), '\u2013', '\u2019', '\u20ac', '\u0152', '\u{1f350}', '\u6885']) {
    const ours = face.glyph(char);
    expect(ours, char).toEqual(large.face.glyph(char));
    if (ours && ours.outline.length > 0) drawn++;
  }
  expect(drawn).toBeGreaterThan(60);
});

/** Big-endian numbers of 16 bits, as a font file has them. */
function words(...values: readonly number[]): number[] {
  return values.flatMap((v) => [(v >> 8) & 255, v & 255]);
}

// OpenType 1.9, glyf: x' = xscale x + scale10 y, y' = scale01 x + yscale y, in the file xscale, scale01, scale10,
// yscale (FreeType's ttgload.c reads xx, yx, xy, yy). No face of the catalogue turns a part, and opentype.js 1.3.4
// turns it the other way, so it can't be the judge of this.
test('a glyph that is another one, turned a quarter counter-clockwise and moved', () => {
  const one = 1 << 14;
  // One contour of three points on the curve (flags 1), each a step from the last; a byte to fill the word.
  const triangle = [...words(1, 0, 0, 0, 0, 2, 0), 1, 1, 1, ...words(100, 0, -100), ...words(0, 10, 10), 0];
  // Flags: words, offsets, two by two. The part is glyph 0.
  const turned = words(-1, 0, 0, 0, 0, 1 | 2 | 128, 0, 7, 3, 0, one, -one, 0);
  const view = (bytes: readonly number[]) => new DataView(Uint8Array.from(bytes).buffer);
  const loca = view(words(0, triangle.length / 2, (triangle.length + turned.length) / 2));
  const [contour] = glyfReader(view([...triangle, ...turned]), loca, false, 2)(1);
  expect(contour?.map(({ x, y }) => [x, y])).toEqual([
    [7, 103],
    [-3, 103],
    [-13, 3],
  ]);
});

test('a catalogue file that is cut short or spoilt is not taken for a font', async () => {
  const [entry] = FACES;
  const bytes = new Uint8Array(readFileSync(packageFile(entry!.packageName, entry!.file)));
  await expect(unpackInBrowser(bytes.slice(0, bytes.length / 2))).rejects.toThrow();
  await expect(unpackInBrowser(bytes.map((b, i) => (i > 2000 && i < 2100 ? 255 - b : b)))).rejects.toThrow();
});
