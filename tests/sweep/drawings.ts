import { FACES } from '../../fonts/catalogue.ts';
import { union } from '../../geometry/adapters/clipper.ts';
import type { Face } from '../../geometry/adapters/face.ts';
import type { Manner, Stock } from '../../geometry/design/schema.ts';
import { flattenOutline } from '../../geometry/measure/flatten.ts';
import { placeRing } from '../../geometry/measure/place.ts';
import type { Region, Ring } from '../../geometry/shapes.ts';
import { FLATTEN_ERROR_MM } from '../../geometry/units.ts';
import { seeded } from '../judge/seeded.ts';
import { CAP_HEIGHTS_MM, faceOf, scaled, STOCKS } from './case.ts';

/** Something to cut that is more than one letter. */
export interface Drawing {
  readonly name: string;
  readonly drawn: readonly Region[];
  readonly stock: Stock;
  readonly manner: Manner;
}

const MANNERS: readonly Manner[] = ['hidden', 'hidden', 'upright', 'band'];

/** Scripts and a blackletter: letters that run into each other, or nearly. */
const JOINING = ['great-vibes-400', 'berkshire-swash-400', 'unifrakturcook-700'];
const WORDS = [
  'office',
  'fifty',
  'Blessing',
  'affine',
  'Ægir',
  'Ballroom',
  'goodbye',
  'Fjord',
  'ﬁﬂ',
  '1868',
  'Qué',
  'p&p',
];

/** Words of joining faces as one drawing, ligature signs among them; a seeded choice of word, face, height and stock. */
export async function joinedWords(count: number, seed: number): Promise<Drawing[]> {
  const random = seeded(seed);
  const drawings: Drawing[] = [];
  while (drawings.length < count) {
    const [id, word, capMm] = [random.pick(JOINING), random.pick(WORDS), random.pick(CAP_HEIGHTS_MM)];
    // A little tighter than set, so that what nearly joins does.
    const drawn = drawnWord(await faceOf(id), word, capMm, random.between(-0.06, 0));
    const [stock, manner] = [random.pick(STOCKS), random.pick(MANNERS)];
    if (drawn.length > 0)
      drawings.push({ name: named(`${id} ${word} ${capMm} mm`, stock, manner), drawn, stock, manner });
  }
  return drawings;
}

function drawnWord(face: Face, word: string, capMm: number, tracking: number): Region[] {
  const em = capMm / face.capHeight;
  const rings: Ring[] = [];
  let [x, last] = [0, ''];
  for (const char of word) {
    const glyph = face.glyph(char);
    if (!glyph) continue;
    x += face.kern(last, char) * em;
    const at = { x, y: 0, turnDeg: 0 };
    // Each letter united by itself first: where two overlap, both are cut.
    const own = union(flattenOutline(scaled(glyph.outline, em), FLATTEN_ERROR_MM));
    rings.push(...own.flatMap((r) => [r.outer, ...r.holes]).map((ring) => placeRing(ring, at)));
    x += (glyph.advance + tracking) * em;
    last = char;
  }
  return union(rings);
}

const INNERMOST = [...'OB8&@Rag®'];

/**
 * Frames in frames with a letter in the innermost: three levels of metal, each carried by the one around it. Frames
 * are round, square or pointed, off the middle by a little; all of it from the seed.
 */
export async function nestedDrawings(count: number, seed: number): Promise<Drawing[]> {
  const random = seeded(seed);
  const drawings: Drawing[] = [];
  for (let i = 0; i < count; i++) {
    const [face, char, capMm] = [
      await faceOf(random.pick(FACES).id),
      random.pick(INNERMOST),
      random.pick([12, 25, 50]),
    ];
    const [stock, manner] = [random.pick(STOCKS), random.pick(MANNERS)];
    const letter = drawnWord(face, char, capMm, 0);
    const points = letter.flatMap((r) => r.outer);
    if (points.length === 0) continue;
    const [x0, x1] = [Math.min(...points.map((p) => p.x)), Math.max(...points.map((p) => p.x))];
    const [y0, y1] = [Math.min(...points.map((p) => p.y)), Math.max(...points.map((p) => p.y))];
    const at = { x: (x0 + x1) / 2, y: (y0 + y1) / 2 };
    const regions: Region[] = [...letter];
    let inner = Math.hypot(x1 - x0, y1 - y0) / 2;
    for (let level = 0; level < 2; level++) {
      inner += random.between(0.15, 0.5) * capMm;
      const outer = inner + random.between(0.06, 0.3) * capMm;
      const corners = random.pick([4, 6, 12, 90]);
      // A frame of few corners reaches inward between them.
      const reach = 1 / Math.cos(Math.PI / corners);
      const turn = random.between(0, 2);
      regions.push({
        outer: frame(at, outer * reach, corners, turn),
        holes: [frame(at, inner * reach, corners, turn).reverse()],
      });
      inner = outer * reach;
    }
    const drawn = union(regions.flatMap((r) => [r.outer, ...r.holes]));
    drawings.push({
      name: named(`${char} of ${face.id} ${capMm} mm in two frames, drawing ${i}`, stock, manner),
      drawn,
      stock,
      manner,
    });
  }
  return drawings;
}

function frame(
  at: { x: number; y: number },
  radius: number,
  corners: number,
  turn: number,
): { x: number; y: number }[] {
  return Array.from({ length: corners }, (_, i) => {
    const a = (2 * Math.PI * i) / corners + turn;
    return { x: at.x + radius * Math.cos(a), y: at.y + radius * Math.sin(a) };
  });
}

function named(what: string, stock: Stock, manner: Manner): string {
  return `${what}, ${stock.material} ${stock.thicknessMm} mm ${stock.process}, ${manner}`;
}
