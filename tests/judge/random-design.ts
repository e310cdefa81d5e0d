import { FACES } from '../../fonts/catalogue.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import type { Design, DesignElement } from '../../geometry/design/schema.ts';
import { seeded, type Seeded } from './seeded.ts';

const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789'];
const SIGNS = [...'&.,-/#@%?!+()éñäöüÄÖØÅ'];

/**
 * A design that nobody would draw: one to three elements, texts of 1 to 40 characters in any face of the catalogue,
 * ring, line and border, plate 200 to 560 mm, 304 stainless of 1.0 to 3.0 mm. Same seed, same design.
 */
export function randomDesign(seed: number): Design {
  const random = seeded(seed);
  const base = emptyDesign();
  const diameter = random.whole(200, 560);
  const elements: DesignElement[] = [ringText(random, 'top', 0)];
  if (random.next() < 0.6) elements.push(lineText(random));
  if (random.next() < 0.4) elements.push(ringText(random, 'bottom', 180));
  if (random.next() < 0.5) elements.push(border(random));
  return {
    ...base,
    title: `Seed ${seed}`,
    head: {
      ...base.head,
      source: { kind: 'measured', alongMm: diameter + 20, acrossMm: diameter + 20 },
      clearanceMm: 5,
    },
    plates: [{ id: 'plate', name: 'Plate', diameter: { mm: diameter }, quantity: 1 }],
    stock: {
      material: 'stainless-304',
      thicknessMm: random.pick([1, 1.2, 1.5, 2, 2.5, 3]),
      process: 'fibre-laser',
      use: random.pick(['paint', 'torch']),
    },
    bridges: { width: 'auto', manner: random.pick(['hidden', 'upright', 'band']), edits: [] },
    elements,
  };
}

function someText(random: Seeded, most: number): string {
  const length = random.whole(1, most);
  let text = '';
  while ([...text].length < length) {
    const roll = random.next();
    text += roll < 0.12 ? ' ' : roll < 0.2 ? random.pick(SIGNS) : random.pick(LETTERS);
  }
  return text;
}

function ringText(random: Seeded, id: string, middleDeg: number): DesignElement {
  const text = someText(random, id === 'top' ? 40 : 16);
  // Capitals as high as the rim has room for so many letters, give or take.
  const cap = Math.min(0.2, (2.4 / Math.max(4, text.length)) * random.between(0.8, 1.3));
  const outer = random.between(0.78, 0.86);
  return {
    kind: 'ringText',
    id,
    text,
    face: random.pick(FACES).id,
    inner: outer - cap,
    outer,
    middleDeg,
    reads: middleDeg === 0 ? 'outward' : 'inward',
    tracking: random.between(0, 0.15),
    fit: 'natural',
  };
}

function lineText(random: Seeded): DesignElement {
  const text = someText(random, 10);
  return {
    kind: 'lineText',
    id: 'line',
    text,
    face: random.pick(FACES).id,
    x: random.between(-0.05, 0.05),
    y: random.between(-0.1, 0.1),
    capHeight: Math.min(0.4, random.between(0.8, 1.2) / Math.max(2, text.length)),
    turnDeg: random.pick([0, 0, 0, 12, -30]),
    tracking: random.between(0, 0.1),
    fit: 'natural',
  };
}

function border(random: Seeded): DesignElement {
  const outer = random.between(0.92, 0.94);
  return {
    kind: 'border',
    id: 'border',
    style: random.pick(['ring', 'dashes', 'beads', 'rope']),
    inner: outer - random.between(0.015, 0.03),
    outer,
    count: 'auto',
  };
}
