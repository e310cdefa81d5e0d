import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { FACES } from '../../fonts/catalogue.ts';
import { printableLatin1 } from '../../fonts/coverage.ts';
import { packageFile } from '../../fonts/node-faces.ts';
import { readFace } from '../../geometry/adapters/opentype.ts';
import { readTrueType } from '../../geometry/adapters/truetype.ts';

/** Outside check: the small reader against opentype.js, every glyph of every face to the last digit. */
test.each(FACES)('$id: the small reader draws what opentype.js draws', (entry) => {
  const bytes = new Uint8Array(readFileSync(packageFile(entry.packageName, entry.file)));
  const kerning = { unitsPerEm: 1000, pairs: {} };
  const small = readTrueType(entry.id, entry.name, bytes, kerning, entry.joins);
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
