import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { FACE_KINDS, FACES } from '../../fonts/catalogue.ts';
import { existsSync } from 'node:fs';
import { faceUrl } from '../../fonts/browser-faces.ts';
import { furtherUrl } from '../../fonts/browser-further.ts';
import { coverageOf } from '../../fonts/coverage.ts';
import { loadFace, loadFaces, packageFile } from '../../fonts/node-faces.ts';

/** Characters that every face must have to be of any use for names, dates and numbers. */
const NEEDED = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789 &.,'-/éñäöüÉÑÄÖÜ";

test.each(FACES)('$id loads, has what names need and a sound cap height', async (entry) => {
  const outcome = await loadFace(entry.id);
  if ('problem' in outcome) throw new Error(outcome.problem);
  const { has } = coverageOf(outcome.face);
  expect(
    Array.from(NEEDED)
      .filter((char) => !has.includes(char))
      .join(''),
  ).toBe('');
  // Flat capitals of Latin faces are between half and nine tenths of the em (measured on the catalogue; no source).
  expect(outcome.face.capHeight).toBeGreaterThan(0.5);
  expect(outcome.face.capHeight).toBeLessThan(0.9);
});

test.each(FACES)('$id carries its licence text, and the browser knows where its file is', (entry) => {
  const licence = readFileSync(packageFile(entry.packageName, entry.licenceFile), 'utf8');
  // The title line that the licence itself prescribes: openfontlicense.org, OFL 1.1.
  expect(licence).toContain('SIL OPEN FONT LICENSE Version 1.1');
  expect(entry.licence).toBe('OFL-1.1');
  expect(faceUrl(entry)).toContain(entry.file.split('/').at(-1));
});

test.each(FACES)('$id names its file of further letters, if its package has one', (entry) => {
  const file = entry.file.replace('-latin-', '-latin-ext-');
  expect(entry.furtherFile).toBe(existsSync(packageFile(entry.packageName, file)) ? file : undefined);
  if (entry.furtherFile !== undefined) expect(furtherUrl(entry)).toContain(file.split('/').at(-1));
});

describe('the catalogue as a whole', () => {
  test('every face once, with stencil faces and at least eight others', () => {
    expect(new Set(FACES.map((face) => face.id)).size).toBe(FACES.length);
    expect(FACES.filter((face) => !FACE_KINDS.includes(face.kind))).toEqual([]);
    expect(FACES.filter((face) => !face.name || !(face.weight > 0) || !/[.]$/.test(face.suits))).toEqual([]);
    expect(FACES.filter((face) => face.kind === 'stencil').length).toBeGreaterThanOrEqual(11);
    expect(FACES.filter((face) => face.kind !== 'stencil').length).toBeGreaterThanOrEqual(8);
  });

  test('measured coverage tells of a sign that a face lacks', async () => {
    const outcome = await loadFace('allerta-stencil-400');
    if ('problem' in outcome) throw new Error(outcome.problem);
    expect(coverageOf(outcome.face).lacks).toContain('#');
  });

  test('a design gets the faces it names; what cannot be had is said', async () => {
    const { faces, problems } = await loadFaces({
      elements: [
        { kind: 'lineText', face: 'cinzel-700' },
        { kind: 'border' },
        { kind: 'lineText', face: 'own:0badf00d' },
      ],
      ownFaces: [],
    });
    expect(faces.get('cinzel-700')?.name).toContain('Cinzel');
    expect(faces.get('stardos-stencil-700')).toBeUndefined();
    expect(problems.map((p) => p.faceId)).toEqual(['own:0badf00d']);
  });
});
