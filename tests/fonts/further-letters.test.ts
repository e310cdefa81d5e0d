import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { faceEntry, FACES } from '../../fonts/catalogue.ts';
import { openFont } from '../../fonts/kerning-by-fontkit.ts';
import { loadFace, loadFaces, packageFile } from '../../fonts/node-faces.ts';
import type { Face } from '../../geometry/adapters/face.ts';
import { flattenOutline } from '../../geometry/measure/flatten.ts';
import { ringBox, signedAreaMm2 } from '../../geometry/measure/ring.ts';
import { runAnswers, type AnswerCase } from '../figures/begin/answered.ts';

// Letters that the alphabets of these languages have beyond Latin-1: Unicode CLDR 45, exemplar characters, from memory.
const ALPHABETS = {
  Polish: 'ĄĆĘŁŃŚŹŻąćęłńśźż',
  Hungarian: 'ŐŰőű',
  Czech: 'ČĎĚŇŘŠŤŮŽčďěňřšťůž',
  Turkish: 'ĞİŞğış',
  Romanian: 'Ăă',
} as const;
const ALL = Object.values(ALPHABETS).join('');
/** Drawn with no more than Š and Ž of these: found out on its file. */
const POOR = ['keania-one-400'];

const wanted = (face: string, text: string) => ({ elements: [{ kind: 'lineText', face, text }], ownFaces: [] });

async function faceWith(id: string, text: string): Promise<Face> {
  const { faces, problems } = await loadFaces(wanted(id, text));
  expect(problems).toEqual([]);
  return faces.get(id)!;
}

const further = FACES.filter((f) => f.furtherFile !== undefined && !POOR.includes(f.id));

describe('further Latin letters', () => {
  it.each(further)('$id draws them as fontkit, another reader, does', async ({ id, packageName, furtherFile }) => {
    const face = await faceWith(id, ALL);
    const font = openFont(readFileSync(packageFile(packageName, furtherFile!)));
    for (const char of ALL) {
      const ours = face.glyph(char);
      // dotless i stands in the first file
      if (char === 'ı') continue;
      const theirs = font.glyphForCodePoint(char.codePointAt(0)!);
      expect(ours?.advance ?? 0, char).toBeCloseTo(theirs.advanceWidth / font.unitsPerEm, 4);
      const boxes = flattenOutline(ours?.outline ?? [], 0.0005).map(ringBox);
      expect(Math.max(...boxes.map((b) => b.maxY)), char).toBeCloseTo(theirs.bbox.maxY / font.unitsPerEm, 2);
    }
  });

  it('come only when a text needs them', async () => {
    expect((await faceWith('oswald-700', 'Otto')).glyph('Ł')).toBeUndefined();
    expect((await faceWith('oswald-700', 'Łukasz')).glyph('Ł')).toBeDefined();
    const { faces } = await loadFaces(wanted('oswald-700', '{name}'), 'Łukasz');
    expect(faces.get('oswald-700')?.glyph('Ł')).toBeDefined();
  });

  it('stand on the measures of the face and are kerned as the letter they are drawn from', async () => {
    const plain = await loadFace('playfair-display-700');
    if ('problem' in plain) throw new Error(plain.problem);
    const face = await faceWith('playfair-display-700', 'Ą');
    expect(face.capHeight).toBe(plain.face.capHeight);
    expect(face.kern('Ą', 'V')).toBe(plain.face.kern('A', 'V'));
    expect(face.kern('A', 'V')).toBe(plain.face.kern('A', 'V'));
  });

  it('are refused by the name of the letter where a face was never drawn with them', async () => {
    expect(faceEntry('stardos-stencil-700')?.furtherFile).toBeUndefined();
    expect((await faceWith('stardos-stencil-700', 'Łódź')).glyph('Ł')).toBeUndefined();
  });

  it('have their counters, so that they are bridged', async () => {
    const face = await faceWith('alfa-slab-one-400', 'ŐĄ');
    const areas = flattenOutline(face.glyph('Ő')!.outline, 0.0005).map(signedAreaMm2);
    // a bowl, its counter and two accents
    expect(areas).toHaveLength(4);
    expect(new Set(areas.map(Math.sign)).size).toBe(2);
  });

  const plates: readonly AnswerCase[] = [
    { beginning: 'wreath-and-name', letters: 'sturdy', answers: { name: 'Łukasz Wiśniewski', above: 'Dom' } },
    { beginning: 'wreath-and-name', letters: 'friendly', answers: { name: 'Erzsébet Szőke' } },
    { beginning: 'name-over-motif', letters: 'poster', answers: { name: 'Çağla Şahin', beneath: 'İzmir' } },
    { beginning: 'golden-wedding', letters: 'classic', answers: { names: 'Šárka & Łucja' } },
    { beginning: 'jubilee', letters: 'farm', answers: { who: 'Ștefan & Mădălina' } },
  ];
  it.each(plates)('$answers is cut at both sizes, as typed', async (one) => {
    expect(await runAnswers(one)).toMatchObject({ stops: [], rewritten: false });
  });
});
