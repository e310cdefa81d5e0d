import { readFileSync } from 'node:fs';
import type { Font } from 'fontkit';
import { expect, test } from 'vitest';
import { FACES } from '../../fonts/catalogue.ts';
import type { FaceEntry } from '../../fonts/catalogue.ts';
import { printableLatin1 } from '../../fonts/coverage.ts';
import { openFont, pairKerning } from '../../fonts/kerning-by-fontkit.ts';
import { loadFace, packageFile } from '../../fonts/node-faces.ts';
import type { Face } from '../../geometry/adapters/face.ts';
import { flattenOutline } from '../../geometry/measure/flatten.ts';
import { joinBoxes, ringBox, signedAreaMm2 } from '../../geometry/measure/ring.ts';
import type { Outline, PathCommand } from '../../geometry/shapes.ts';
import { seeded } from '../judge/seeded.ts';

/**
 * Outside check: every face of the catalogue against fontkit, a font reader that shares no code with the one in use.
 * Lengths are in thousandths of the em.
 */
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789';

test.each(FACES)('$id: letters and figures are drawn as fontkit draws them', async (entry) => {
  const { face, font } = await both(entry);
  for (const char of LETTERS) {
    const ours = face.glyph(char);
    const theirs = font.glyphForCodePoint(char.codePointAt(0) ?? 0);
    if (!ours) throw new Error(`${char} is missing`);
    expect(ours.advance * 1000, `advance of ${char}`).toBeCloseTo((theirs.advanceWidth / font.unitsPerEm) * 1000, 3);
    const [a, b] = [
      measure(ours.outline),
      measure(outlineOfFontkit(withoutItsQuirk(theirs.path.commands), font.unitsPerEm)),
    ];
    expect(a.contours, `contours of ${char}`).toBe(b.contours);
    expect(a.area, `area of ${char}`).toBeCloseTo(b.area, 0);
    for (const side of ['minX', 'minY', 'maxX', 'maxY'] as const) {
      expect(a.box[side], `${side} of ${char}`).toBeCloseTo(b.box[side], 0);
    }
  }
});

test.each(FACES)('$id: pairs are kerned as fontkit kerns them', async (entry) => {
  const { face, font } = await both(entry);
  for (const [left, right] of [...samplePairs(entry.id), ...KNOWN_TO_KERN]) {
    const wanted = (pairKerning(font, left, right) / font.unitsPerEm) * 1000;
    // The tables are in whole thousandths.
    expect(Math.abs(face.kern(left, right) * 1000 - wanted), `${left}${right}`).toBeLessThanOrEqual(0.5 + 1e-9);
  }
});

test('kerning that the font reader in use loses is there', async () => {
  // HarfBuzz hb-shape gives AV of Playfair Display Bold -74 units of 1000 (measured with HarfBuzz 1.6.4, wasm build).
  const outcome = await loadFace('playfair-display-700');
  if ('problem' in outcome) throw new Error(outcome.problem);
  expect(Math.round(outcome.face.kern('A', 'V') * 1000)).toBe(-74);
});

const KNOWN_TO_KERN = [
  ['A', 'V'],
  ['T', 'o'],
  ['L', 'T'],
  ['Y', 'a'],
  ['P', '.'],
  ['7', '.'],
  ['A', 'T'],
] as const;
const SAMPLE = 120;

/** Pairs drawn with a fixed seed that differs by face. */
function samplePairs(faceId: string): [string, string][] {
  const chars = printableLatin1();
  const random = seeded(Array.from(faceId).reduce((sum, char) => (sum * 31 + char.charCodeAt(0)) >>> 0, 7));
  const next = () => random.pick(chars);
  // The no-break space shares its glyph with the space and is never laid out.
  return Array.from({ length: SAMPLE }, (): [string, string] => [next(), next()]).filter(
    (pair) => !pair.includes('\u00a0'),
  );
}

async function both(entry: FaceEntry): Promise<{ face: Face; font: Font }> {
  const outcome = await loadFace(entry.id);
  if ('problem' in outcome) throw new Error(outcome.problem);
  return { face: outcome.face, font: openFont(readFileSync(packageFile(entry.packageName, entry.file))) };
}

function measure(outline: Outline) {
  // The flattening step is the same share of the em for both, so it cancels.
  const rings = flattenOutline(outline, 0.0005).map((ring) => ring.map((p) => ({ x: p.x * 1000, y: p.y * 1000 })));
  return {
    contours: rings.length,
    area: rings.reduce((sum, ring) => sum + signedAreaMm2(ring), 0) / 1000,
    box: joinBoxes(rings.map(ringBox)),
  };
}

interface TheirCommand {
  readonly command: string;
  readonly args: readonly number[];
}

/**
 * fontkit 2.0.4 draws a contour that begins off the curve and ends on it (bree-serif O) with a needless line from its
 * start to half-way to its first handle: a curve whose handle is the start itself. By the glyf chapter of OpenType 1.9
 * the curve begins at that last point on the curve.
 */
function withoutItsQuirk(commands: readonly TheirCommand[]): TheirCommand[] {
  return commands.filter(({ command, args }, i) => {
    const [start, next] = [commands[i - 1], commands[i + 1]];
    if (command !== 'quadraticCurveTo' || start?.command !== 'moveTo' || next?.command !== 'quadraticCurveTo')
      return true;
    const handleIsStart = [0, 1].every((k) => args[k] === start.args[k]);
    const endIsHalfway = [0, 1].every((k) => args[k + 2] === ((start.args[k] ?? 0) + (next.args[k] ?? 0)) / 2);
    return !(handleIsStart && endIsHalfway);
  });
}

function outlineOfFontkit(commands: readonly TheirCommand[], em: number): Outline {
  return commands.map(({ command, args }): PathCommand => {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = args.map((v) => v / em);
    switch (command) {
      case 'moveTo':
        return { type: 'M', x: a, y: b };
      case 'lineTo':
        return { type: 'L', x: a, y: b };
      case 'quadraticCurveTo':
        return { type: 'Q', x1: a, y1: b, x: c, y: d };
      case 'bezierCurveTo':
        return { type: 'C', x1: a, y1: b, x2: c, y2: d, x: e, y: f };
      default:
        return { type: 'Z' };
    }
  });
}
