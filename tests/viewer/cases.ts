import { FACES } from '../../fonts/catalogue.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import type { Design, DesignElement, Manner, Stock } from '../../geometry/design/schema.ts';
import { MOTIFS } from '../../geometry/motifs/catalogue.ts';
import { randomDesign } from '../judge/random-design.ts';

/** How a case is named in an address; demos go by the name of their file. */
export const CASE_NAMES = [
  { form: 'seed:42', what: 'the seeded design that tests/judge/ cuts' },
  { form: 'letter:cinzel-700/R/25', what: 'a letter of a face, capitals so many mm high, from 1.5 mm stainless' },
  {
    form: 'letter:cinzel-700/R/25/birch-plywood/3/co2-laser/band',
    what: 'the same from another stock, bridged in another manner; as the sweep prints it',
  },
  { form: 'motif:bee/120', what: 'a motif alone, so many mm high' },
] as const;

const STEEL: Stock = { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' };
const MANNERS: readonly string[] = ['hidden', 'upright', 'band'] satisfies Manner[];

/** A design by the name of its case, or a sentence that says why there is none. */
export function designOfCase(
  name: string,
  demos: ReadonlyMap<string, Design>,
): { readonly design: Design } | { readonly problem: string } {
  const demo = demos.get(name);
  if (demo) return { design: demo };
  const [, kind, rest = ''] = /^(seed|letter|motif):(.+)$/su.exec(name) ?? [];
  if (kind === 'seed') {
    const seed = Number(rest);
    return Number.isSafeInteger(seed)
      ? { design: randomDesign(seed) }
      : { problem: `${rest} is no seed: it is a whole number.` };
  }
  if (kind === 'letter') return letterCase(rest);
  if (kind === 'motif') return motifCase(rest);
  return {
    problem: `There is no case ${name}: take one of ${[...demos.keys()].join(', ')}, ${CASE_NAMES.map((c) => c.form).join(', ')}.`,
  };
}

/** The name of the case of one letter, for a test that says which one it fails with. */
export function letterName(face: string, char: string, capMm: number, stock: Stock, manner: Manner = 'hidden'): string {
  return `letter:${[face, char, capMm, stock.material, stock.thicknessMm, stock.process, manner].join('/')}`;
}

/** FACE/CHAR/MM or FACE/CHAR/MM/MATERIAL/MM/PROCESS/MANNER; the character may be a slash itself. */
const LETTER = /^([^/]+)\/(.|\/)\/([\d.]+)(?:\/([^/]+)\/([\d.]+)\/([^/]+)\/([^/]+))?$/su;

function letterCase(rest: string): { readonly design: Design } | { readonly problem: string } {
  const found = LETTER.exec(rest);
  if (!found) return { problem: `A letter's case is named like ${CASE_NAMES[1].form} or ${CASE_NAMES[2].form}.` };
  const [, face = '', char = '', cap, material, thickness, process, manner = 'hidden'] = found;
  if (!FACES.some(({ id }) => id === face)) return { problem: `The catalogue has no face ${face}.` };
  if (!MANNERS.includes(manner)) return { problem: `${manner} is no manner of bridging: take ${MANNERS.join(', ')}.` };
  const capMm = Number(cap);
  const stock = material && process ? { ...STEEL, material, process, thicknessMm: Number(thickness) } : STEEL;
  // Wide letters are about twice as wide as capitals are high.
  const diameterMm = Math.ceil(3 * capMm + 60);
  const set = { x: 0, y: 0, turnDeg: 0, tracking: 0, fit: 'natural' } as const;
  const letter: DesignElement = {
    ...set,
    kind: 'lineText',
    id: 'letter',
    text: char,
    face,
    capHeight: (2 * capMm) / diameterMm,
  };
  const design = alone(rest, letter, diameterMm, stock);
  return { design: { ...design, bridges: { ...design.bridges, manner: manner as Manner } } };
}

function motifCase(rest: string): { readonly design: Design } | { readonly problem: string } {
  const [motif = '', height = '120'] = rest.split('/');
  const heightMm = Number(height);
  if (!MOTIFS.some(({ id }) => id === motif)) return { problem: `There is no motif ${motif}.` };
  if (!(heightMm >= 10 && heightMm <= 600)) return { problem: `A motif is 10 to 600 mm high, not ${height}.` };
  // Motifs are at most about twice as wide as high.
  const diameterMm = Math.ceil(2.4 * heightMm + 60);
  const size = (2 * heightMm) / diameterMm;
  const set = { x: 0, y: 0, turnDeg: 0, around: 'once', options: {} } as const;
  return { design: alone(rest, { ...set, kind: 'motif', id: 'motif', motif, size }, diameterMm, STEEL) };
}

/** One element on one plate. */
function alone(title: string, element: DesignElement, diameterMm: number, stock: Stock): Design {
  const base = emptyDesign();
  return {
    ...base,
    title,
    head: { ...base.head, source: { kind: 'measured', alongMm: diameterMm + 20, acrossMm: diameterMm + 20 } },
    plates: [{ id: 'plate', name: 'Plate', diameter: { mm: diameterMm }, quantity: 1 }],
    stock,
    elements: [element],
  };
}
